package org.orbwright.api;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.orbwright.api.wire.AnswerJson;
import org.orbwright.bench.BenchmarkDesigns;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** Time to write a sheet as JSON. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class AnswerBenchmark {
    /** Name of the design among the worked examples. */
    @Param({"icosahedron-vanishing-rim", "truncated-icosidodecahedron"})
    public String design;

    private Answer sheet;

    /** Computes the sheet. */
    @Setup
    public void compute() {
        sheet = SheetCalculator.sheet(BenchmarkDesigns.read(design), 9);
    }

    /** Its JSON. */
    @Benchmark
    public byte[] write() {
        return AnswerJson.write(sheet);
    }
}
