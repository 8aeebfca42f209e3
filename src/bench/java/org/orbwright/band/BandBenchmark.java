package org.orbwright.band;

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

/** Time to measure one band on the sphere, in closed form and by adaptive quadrature. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class BandBenchmark {
    /** Name of the design among the worked examples. */
    @Param("icosahedron-mixed")
    public String design;

    private RimBand band;

    /** Reads the design; all ways have to agree, or their times mean nothing. */
    @Setup
    public void read() {
        band = RimBand.of(design);
        agree(band.alongRays(), 10 * RimBand.ALONG_RAYS);
        agree(band.overPlan(), 10 * RimBand.OVER_PLAN);
    }

    private void agree(double area, double error) {
        double exact = band.closedForm();
        if (!(Math.abs(area - exact) <= error * exact)) {
            throw new IllegalStateException(area + " is not " + exact);
        }
    }

    /** Area in closed form. */
    @Benchmark
    public double closedForm() {
        return band.closedForm();
    }

    /** Area by one adaptive integral, to a relative error of 1e-12. */
    @Benchmark
    public double alongRays() {
        return band.alongRays();
    }

    /** Area by an adaptive integral of adaptive integrals, to a relative error of 1e-9. */
    @Benchmark
    public double overPlan() {
        return band.overPlan();
    }

    /** Volume in closed form. */
    @Benchmark
    public double volume() {
        return band.volume();
    }
}
