package org.orbwright.bench;

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
import org.orbwright.band.BandCalculator;
import org.orbwright.band.BandSurvival;
import org.orbwright.design.Design;
import org.orbwright.document.Document;
import org.orbwright.segment.Yield;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** Time of one full sheet, from the request as it was read to the finished record, and of its two dearest parts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SheetBenchmark {
    private static final int STATIONS = 9;

    /** Name of the design among the worked examples. */
    @Param({"icosahedron-vanishing-rim", "truncated-icosidodecahedron"})
    public String design;

    private Document document;
    private Design checked;

    /** Reads the design. */
    @Setup
    public void read() {
        document = BenchmarkDesigns.read(design);
        checked = Design.of(document.design());
    }

    /** Design and sheet. */
    @Benchmark
    public Answer sheet() {
        return SheetCalculator.sheet(document, STATIONS);
    }

    /** Checking the design alone. */
    @Benchmark
    public Design designOnly() {
        return Design.of(document.design());
    }

    /** The bands alone. */
    @Benchmark
    public BandSurvival bandsOnly() {
        return BandCalculator.calculate(checked, STATIONS);
    }

    /** The yield alone. */
    @Benchmark
    public Yield yieldOnly() {
        return YieldCalculator.calculate(checked);
    }
}
