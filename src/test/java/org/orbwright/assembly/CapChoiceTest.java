package org.orbwright.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.assembly.AssemblyPlan.AxisThrough;
import org.orbwright.assembly.AssemblyPlan.Cap;
import org.orbwright.assembly.AssemblyPlan.CapSeam;
import org.orbwright.assembly.AssemblyPlan.SolidStage;
import org.orbwright.assembly.AssemblyPlan.SolidWork;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Face;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;

/** No axis parts a solid better than the one that is chosen, and caps grow from their poles. */
@Slow
class CapChoiceTest {
    private static final String SOLIDS = "org.orbwright.assembly.Assemblies#solids";
    private static final double SAME = 1e-9;

    /** An axis, by what decides between axes, the best first. */
    private record Parting(int sliding, int seams, double length, boolean square, boolean largestFace) {
        boolean isBetterThan(Parting other) {
            if (sliding != other.sliding) {
                return sliding < other.sliding;
            }
            if (seams != other.seams) {
                return seams < other.seams;
            }
            if (Math.abs(length - other.length) > SAME) {
                return length < other.length;
            }
            return square != other.square ? square : largestFace && !other.largestFace;
        }

        static Parting of(Solid solid, Set<Integer> first, Vector3D axis, boolean largestFace) {
            int sliding = 0;
            int seams = 0;
            double length = 0;
            boolean square = true;
            for (Edge edge : solid.edges()) {
                if (first.contains(edge.face()) != first.contains(edge.neighbour())) {
                    Vector3D from = solid.vertices().get(edge.from()).vector();
                    Vector3D to = solid.vertices().get(edge.to()).vector();
                    double rise = height(solid, edge.face(), axis) - height(solid, edge.neighbour(), axis);
                    sliding += Math.abs(rise) < SAME ? 1 : 0;
                    seams++;
                    length += from.distance(to);
                    square &= Math.abs(from.dot(axis)) < SAME && Math.abs(to.dot(axis)) < SAME;
                }
            }
            return new Parting(sliding, seams, length, square, largestFace);
        }
    }

    /** Of the corner of the dual solid (about the unit sphere) that stands for a panel. */
    private static double height(Solid solid, int panel, Vector3D axis) {
        Face face = solid.faces().get(panel);
        Vector3D normal = solid.normal(face);
        return normal.dot(axis) / normal.dot(solid.corner(face, 0));
    }

    private static boolean largest(Solid solid, int face) {
        double most =
                solid.faceKinds().stream().mapToDouble(FaceKind::area).max().orElseThrow();
        return solid.faceKinds().stream()
                .anyMatch(kind -> kind.face().equals(solid.faces().get(face).kind()) && kind.area() > most - SAME);
    }

    private static Vector3D axis(Solid solid, CapSeam caps) {
        return switch (caps.axisThrough()) {
            case FACE -> solid.normal(solid.faces().get(caps.axisNumber()));
            case CORNER -> solid.vertices().get(caps.axisNumber()).vector().normalize();
            case EDGE -> middle(solid, solid.edges().get(caps.axisNumber()));
        };
    }

    private static Vector3D middle(Solid solid, Edge edge) {
        return solid.vertices()
                .get(edge.from())
                .vector()
                .add(solid.vertices().get(edge.to()).vector())
                .normalize();
    }

    /** The upper half of the panels, if no two at its end are equally high; otherwise none. */
    private static Set<Integer> upperHalf(Solid solid, Vector3D axis) {
        List<Integer> sorted =
                new ArrayList<>(IntStream.range(0, solid.faces().size()).boxed().toList());
        sorted.sort((a, b) -> Double.compare(height(solid, b, axis), height(solid, a, axis)));
        int half = sorted.size() / 2;
        boolean parted = height(solid, sorted.get(half - 1), axis) > height(solid, sorted.get(half), axis) + SAME;
        return parted ? Set.copyOf(sorted.subList(0, half)) : Set.of();
    }

    private static Set<Integer> firstCap(AssemblyPlan plan) {
        Set<Integer> first = new HashSet<>();
        plan.panels().stream().filter(panel -> panel.cap() == Cap.FIRST).forEach(panel -> first.add(panel.panel()));
        return first;
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void noAxisThatPartsThePanelsByTheirHeightsIsBetter(String name) {
        Solid solid = Designs.solid(name);
        AssemblyPlan plan = Assemblies.plan(Assemblies.small(name));
        CapSeam caps = plan.caps();
        boolean face = caps.axisThrough() == AxisThrough.FACE && largest(solid, caps.axisNumber());
        Parting chosen = Parting.of(solid, firstCap(plan), axis(solid, caps), face);
        assertEquals(caps.loop().size(), chosen.seams());
        List<Parting> others = new ArrayList<>();
        for (int i = 0; i < solid.faces().size(); i++) {
            Vector3D axis = solid.normal(solid.faces().get(i));
            others.add(parting(solid, axis, largest(solid, i)));
        }
        solid.vertices().forEach(v -> others.add(parting(solid, v.vector().normalize(), false)));
        solid.edges().forEach(e -> others.add(parting(solid, middle(solid, e), false)));
        for (Parting other : others) {
            assertTrue(other == null || !other.isBetterThan(chosen), () -> name + ": " + other + " beats " + chosen);
        }
    }

    private static Parting parting(Solid solid, Vector3D axis, boolean largestFace) {
        Set<Integer> first = upperHalf(solid, axis);
        return first.isEmpty() ? null : Parting.of(solid, first, axis, largestFace);
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void capsGrowFromTheirPoles(String name) {
        Solid solid = Designs.solid(name);
        AssemblyPlan plan = Assemblies.plan(Assemblies.small(name));
        Vector3D axis = axis(solid, plan.caps());
        Set<Integer> first = firstCap(plan);
        for (SolidStage stage : plan.stages()) {
            boolean upper = stage.work() == SolidWork.FIRST_CAP;
            Vector3D pole = upper ? axis : axis.negate();
            Set<Integer> there = new HashSet<>();
            for (int panel : stage.panels()) {
                double height = height(solid, panel, pole);
                int touched = touched(solid, there, panel);
                for (int other = 0; other < solid.faces().size(); other++) {
                    int touches = touched(solid, there, other);
                    if (first.contains(other) == upper && !there.contains(other) && (there.isEmpty() || touches > 0)) {
                        double higher = height(solid, other, pole) - height;
                        assertTrue(higher < SAME, name + ": " + other + " is higher than " + panel);
                        assertTrue(higher < -SAME || touches <= touched, name + ": " + other + " touches more");
                    }
                }
                there.add(panel);
            }
        }
    }

    private static int touched(Solid solid, Set<Integer> there, int panel) {
        return (int) solid.edges().stream()
                .filter(edge -> (edge.face() == panel && there.contains(edge.neighbour()))
                        || (edge.neighbour() == panel && there.contains(edge.face())))
                .count();
    }

    @ParameterizedTest
    @MethodSource(SOLIDS)
    void stagesAreNumberedFromOne(String name) {
        AssemblyPlan plan = Assemblies.plan(Assemblies.small(name), 5);
        assertEquals(
                IntStream.rangeClosed(1, plan.stages().size()).boxed().toList(),
                plan.stages().stream().map(SolidStage::stage).toList());
    }
}
