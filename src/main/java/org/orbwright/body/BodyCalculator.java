package org.orbwright.body;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.body.Body.Part;
import org.orbwright.body.WoodComplex.Surfaces;
import org.orbwright.body.WoodCutter.Shaping;
import org.orbwright.body.WoodCutter.Wood;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.Violation;
import org.orbwright.notice.Article;
import org.orbwright.quantity.Rounding;
import org.orbwright.segment.WholeWall;

/** Makes the bodies of a design. */
public final class BodyCalculator {
    /** The most triangles that a body may have; as STL they take 10 megabytes. */
    public static final int MOST_TRIANGLES = 200_000;
    /** The usual deviation, as a share of the sphere's diameter. */
    private static final double USUAL_DEVIATION = 1 / 2000.0;
    /** Flat triangles around one piece of wood; seen: 20 to 30. */
    private static final double FLAT_PER_PIECE = 30;
    /** Triangles in a patch for each that would be equilateral with the longest edges; seen: 4.7. */
    private static final double ROUND_EXCESS = 6;
    /** Decimals with which the finest deviation can be written. */
    private static final int FINEST_DECIMALS = 9;

    private final Design design;
    private final BodyKind kind;
    private final BodyOptions options;

    private BodyCalculator(Design design, BodyKind kind, BodyOptions options) {
        this.design = design;
        this.kind = kind;
        this.options = options;
    }

    /** The usual deviation for a design, in millimetres. */
    public static double usualDeviation(Design design) {
        return 2 * design.sphereRadius() * USUAL_DEVIATION;
    }

    /** One segment of a panel as it is sawn, its base down, its outer face on top. */
    public static Body segment(Design design, Panel panel, Piece piece, BodyOptions options) {
        BodyCalculator calculator = new BodyCalculator(design, BodyKind.SEGMENT, options);
        String title = "Segment " + piece.segment() + " of the " + panel.face() + " panel";
        return calculator.body(
                title, List.of(SegmentPlace.alone(panel, piece, design.set(options.set()))), laid(design, panel));
    }

    /** The first bevelled panel of a face kind, its inner face down, the first base down as seen from outside. */
    public static Body panel(Design design, String face, BodyOptions options) {
        BodyCalculator calculator = new BodyCalculator(design, BodyKind.PANEL, options);
        List<SegmentPlace> places = SegmentPlace.ofPanel(design, face, design.set(options.set()));
        String title = "Bevelled " + face + " panel of the " + design.solid().name();
        return calculator.body(title, places, laid(design, places.get(0).panel()));
    }

    /** The glued-up solid as if it had no hollow, of one part, around its centre. */
    public static Body solid(Design design) {
        BodyOptions one = new BodyOptions(null, true, null);
        return new BodyCalculator(design, BodyKind.SOLID, one)
                .body(
                        "Glued-up " + design.solid().name() + " without its hollow",
                        SegmentPlace.ofSolid(design, design.sphere(null)),
                        Vector3D.ZERO);
    }

    /** The glued-up solid with its hollow, around its centre. */
    public static Body shell(Design design, BodyOptions options) {
        return new BodyCalculator(design, BodyKind.SHELL, options)
                .body(
                        "Glued-up " + design.solid().name(),
                        SegmentPlace.ofSolid(design, design.sphere(options.set())),
                        Vector3D.ZERO);
    }

    /**
     * The finished sphere with its hollow, around its centre.
     *
     * @throws ImpossibleDesignException if the deviation asked for takes too many triangles
     */
    public static Body sphere(Design design, BodyOptions options) {
        return new BodyCalculator(design, BodyKind.SPHERE, options)
                .body(
                        "Sphere from " + Article.with(design.solid().name()),
                        SegmentPlace.ofSolid(design, design.sphere(options.set())),
                        Vector3D.ZERO);
    }

    /** Where a panel is moved so that its inner face lies at height 0. */
    private static Vector3D laid(Design design, Panel panel) {
        return Vector3D.of(0, 0, design.thickness() - panel.faceDistance());
    }

    private Body body(String title, List<SegmentPlace> places, Vector3D move) {
        if (!options.whole()) {
            design.require("the woods of the body depend", DesignPart.LAMINATIONS);
        }
        Shaping shaping = new Shaping(
                kind != BodyKind.SEGMENT, kind == BodyKind.SOLID ? null : design.thickness(), options.whole());
        List<Wood> woods = new WoodCutter(places, shaping).cut();
        checkCount(woods.size());
        List<String> names = names(woods);
        List<Integer> bodies =
                woods.stream().map(wood -> names.indexOf(wood.species())).toList();
        WoodComplex complex = new WoodComplex(woods);
        Surfaces surfaces = kind == BodyKind.SPHERE
                ? complex.turned(bodies, names.size(), design.sphereRadius(), new Fineness(deviation()))
                : complex.flat(bodies, names.size());
        List<Double> volumes = volumes(places, names);
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Mesh mesh = surfaces.meshes().get(i).moved(move);
            if (!mesh.triangles().isEmpty()) {
                String name = options.whole() ? kind.name().toLowerCase(Locale.ROOT) : names.get(i);
                parts.add(new Part(name, mesh, volumes.get(i)));
            }
        }
        return new Body(title, parts, surfaces.deviation());
    }

    private static List<String> names(List<Wood> woods) {
        Set<String> names = new LinkedHashSet<>();
        woods.forEach(wood -> names.add(wood.species()));
        return List.copyOf(names);
    }

    /** The volumes in closed form, which hold as long as the sphere does not reach the hollow. */
    private List<Double> volumes(List<SegmentPlace> places, List<String> names) {
        List<Double> volumes = new ArrayList<>();
        boolean known = kind != BodyKind.SPHERE || WholeWall.of(design);
        WoodVolumes exact = new WoodVolumes(design, kind);
        Map<String, Double> byWood = known && !options.whole() ? exact.byWood(places) : Map.of();
        for (String name : names) {
            volumes.add(!known ? null : options.whole() ? Double.valueOf(exact.of(places)) : byWood.get(name));
        }
        return volumes;
    }

    private double deviation() {
        return options.deviation() == null ? usualDeviation(design) : options.deviation();
    }

    private void checkCount(int pieces) {
        double flat = FLAT_PER_PIECE * pieces;
        double room = MOST_TRIANGLES - flat;
        double radius = design.sphereRadius();
        // An equilateral triangle whose edges are as long as a deviation allows has the area 3 sqrt(3) / 2 deviation R.
        double sphere = 4 * Math.PI * radius * radius * ROUND_EXCESS / (1.5 * Math.sqrt(3) * radius);
        if (room <= 0) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/laminations",
                    "TOO_MANY_PIECES",
                    "This body has " + pieces + " pieces of wood, which may take more than " + MOST_TRIANGLES
                            + " triangles. A panel or a segment, or all wood as one part, takes fewer.",
                    String.valueOf(pieces),
                    "at most " + (int) (MOST_TRIANGLES / FLAT_PER_PIECE) + " pieces")));
        }
        if (kind == BodyKind.SPHERE && sphere / deviation() > room) {
            String least = roundedUp(design.unit().fromMillimetres(sphere / room));
            String unit = " " + design.unit().symbol();
            String asked = Rounding.plain(design.unit().fromMillimetres(deviation()), FINEST_DECIMALS);
            throw new ImpossibleDesignException(List.of(new Violation(
                    "deviation",
                    "TOO_MANY_TRIANGLES",
                    "A deviation of " + asked + unit + " may take more than " + MOST_TRIANGLES
                            + " triangles. A deviation of " + least + unit + " would do.",
                    asked,
                    "at least " + least + unit)));
        }
    }

    /** Two digits are enough to say how fine a mesh may be. */
    private static String roundedUp(double length) {
        return new BigDecimal(length)
                .round(new MathContext(2, RoundingMode.CEILING))
                .toPlainString();
    }
}
