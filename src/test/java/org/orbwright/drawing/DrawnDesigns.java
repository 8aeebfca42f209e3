package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.orbwright.assembly.NetCalculator;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.BlankRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.DesignRequest.PanelRequest;
import org.orbwright.design.DesignRequest.SawRequest;
import org.orbwright.design.DesignRequest.SizeRequest;
import org.orbwright.design.DesignRequest.SphereRequest;
import org.orbwright.design.Panel;
import org.orbwright.design.SizeBy;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;

/** Designs for the tests of drawings: the worked examples, and invented ones on every solid. */
final class DrawnDesigns {
    private DrawnDesigns() {}

    static Stream<String> examples() {
        return Stream.of(
                "cube-with-chevrons",
                "deltoidal-hexecontahedron-upright-bands",
                "dodecahedron-two-spheres",
                "dodecahedron-vanishing-rim",
                "dodecahedron-with-land",
                "rhombic-triacontahedron",
                "truncated-icosahedron",
                "truncated-icosidodecahedron");
    }

    static Design example(String name) {
        return Designs.example(name).build();
    }

    static Stream<String> solids() {
        return SolidCatalogue.all().stream().map(Solid::name);
    }

    /** A solid of 300 mm across flats; the sphere as a share of the largest without flats, or null for the default. */
    static Design on(String name, double bandAngle, double thickness, double land, Double sphere) {
        Solid solid = SolidCatalogue.find(name).orElseThrow();
        double edge = (150 - land) / solid.inradius();
        List<LaminationRequest> laminations = new ArrayList<>();
        for (FaceKind kind : solid.faceKinds()) {
            double base = kind.baseDistance() * edge;
            List<BandRequest> bands = List.of(
                    new BandRequest("black walnut", 0.3 * base),
                    new BandRequest("sugar maple", 0.2 * base),
                    new BandRequest("wood with a name of its own", null));
            laminations.add(new LaminationRequest(kind.face(), bandAngle, bands));
        }
        return Design.of(new DesignRequest(
                "a sketch",
                LengthUnit.MM,
                name,
                1,
                null,
                null,
                null,
                new SizeRequest(SizeBy.ACROSS_FLATS, 300.0),
                new PanelRequest(thickness, land),
                laminations,
                null,
                new SawRequest(3.0, null),
                new BlankRequest(600.0),
                new SphereRequest(sphere, 2.0, 1.0)));
    }

    /** Every drawing of a design by name. */
    static Map<String, Drawing> drawings(Design design) {
        Map<String, Drawing> drawings = new LinkedHashMap<>();
        for (BandSet set : BandSet.values()) {
            for (Panel panel : design.panels()) {
                drawings.put("panel " + panel.face() + set, PanelDrawing.draw(design, panel.face(), set));
                drawings.put(
                        "survival " + panel.face() + set,
                        SurvivalDrawing.draw(design, panel.face(), panel.places(), set, 21));
            }
            drawings.put("sphere " + set, SphereDrawing.draw(design, design.sphere(set), 0.5, 0.4, true));
        }
        drawings.put(
                "sphere lit", SphereDrawing.draw(design, design.sphere(null), new SphereLook(0.5, 0.4, false, true)));
        if (design.hasTwoSets()) {
            drawings.put(
                    "spheres",
                    SphereDrawing.sideBySide(design, design.sphereOfEachSet(), new SphereLook(0.5, 0.4, true, true)));
        }
        drawings.put(
                "net", NetDrawing.draw(design, design.sphere(BandSet.UPRIGHT), NetCalculator.calculate(null, design)));
        drawings.put("section", SectionDrawing.draw(design));
        return drawings;
    }
}
