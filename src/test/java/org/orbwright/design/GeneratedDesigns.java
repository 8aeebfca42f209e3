package org.orbwright.design;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;

/**
 * Designs for property tests: every solid, straight and tilted bands, both units, spheres that keep flats and spheres
 * far below the faces, with and without a land. The numbers are invented.
 */
public final class GeneratedDesigns {
    private static final double EDGE = 100;

    private GeneratedDesigns() {}

    /** Designs whose laminations all have the given shares of their widths as bands, each in a wood of its own. */
    public static Arbitrary<DesignRequest> designs(Arbitrary<Double> bandAngles) {
        return Combinators.combine(
                        Arbitraries.of(SolidCatalogue.all()),
                        bandAngles,
                        Arbitraries.doubles()
                                .between(0.1, 1)
                                .list()
                                .ofMinSize(2)
                                .ofMaxSize(5),
                        Arbitraries.doubles().between(0.75, 1),
                        Arbitraries.of(0.0, 0.0, 0.05),
                        Arbitraries.of(LengthUnit.values()))
                .as(GeneratedDesigns::design);
    }

    /** Bands along the base as often as tilted ones. */
    public static Arbitrary<Double> anyBandAngle() {
        return Arbitraries.oneOf(
                Arbitraries.just(0.0), Arbitraries.doubles().between(-90, 90), Arbitraries.of(90.0, -90.0, 45.0, 36.0));
    }

    /** The sphere is measured by the seams, beyond which it cannot reach: most fractions near 1 leave flats. */
    private static DesignRequest design(
            Solid solid, double bandAngle, List<Double> shares, double ofSeam, double landShare, LengthUnit unit) {
        double inch = unit == LengthUnit.IN ? 25.4 : 1;
        double joint = solid.inradius() * EDGE;
        RequestSketch sketch = RequestSketch.sketch()
                .unit(unit)
                .solid(solid.name())
                .size(SizeBy.EDGE, EDGE / inch)
                .panel(0.3 * joint / inch, landShare * joint / inch)
                .allowance(0)
                .wall(0.01 * joint / inch)
                .diameter(2 * ofSeam * solid.midradius() * EDGE / inch);
        Design rests = sketch.laminations(laminations(solid, bandAngle, null, List.of(1.0), inch))
                .design();
        return sketch.laminations(laminations(solid, bandAngle, rests, shares, inch))
                .request();
    }

    private static LaminationRequest[] laminations(
            Solid solid, double bandAngle, Design rests, List<Double> shares, double inch) {
        double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
        List<LaminationRequest> laminations = new ArrayList<>();
        for (FaceKind kind : solid.faceKinds()) {
            double width = rests == null
                    ? 0
                    : rests.panels().get(laminations.size()).lamination().width();
            List<BandRequest> bands = new ArrayList<>();
            for (int i = 0; i < shares.size(); i++) {
                boolean last = i == shares.size() - 1;
                Double own = last ? null : Double.valueOf(shares.get(i) / sum * width / inch);
                bands.add(new BandRequest("wood " + (i + 1), own));
            }
            laminations.add(new LaminationRequest(kind.face(), bandAngle, bands));
        }
        return laminations.toArray(LaminationRequest[]::new);
    }
}
