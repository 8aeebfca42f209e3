package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.CentreDiagnosis.Roomiest;
import org.orbwright.fixture.Designs;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.tolerance.JointLengths;

/** The centre of the largest sphere, against all corners of the linear program and against centres beside it. */
class RoomiestFitTest {
    private static final double RESOLUTION = 0.05;
    private static final List<Vector3D> AXES =
            List.of(Vector3D.Unit.PLUS_X, Vector3D.Unit.PLUS_Y, Vector3D.Unit.PLUS_Z);

    static Stream<String> solids() {
        return SolidCatalogue.all().stream().map(Solid::name);
    }

    private static List<Vector3D> normals(Solid solid) {
        return solid.faces().stream().map(solid::normal).toList();
    }

    private static List<Reading> readings(double... values) {
        return Arrays.stream(values)
                .mapToObj(value -> Reading.of(value, RESOLUTION))
                .toList();
    }

    /** Distances of the faces from a point beside the centre, each off by something of its own. */
    private static double[] uneven(Design design, Random random) {
        Vector3D centre = Vector3D.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        return design.solid().faces().stream()
                .mapToDouble(face -> JointLengths.panel(design, face.kind()).faceDistance()
                        + 0.3 * random.nextGaussian()
                        + design.solid().normal(face).dot(centre))
                .toArray();
    }

    private static double[] distances(List<Vector3D> normals, double[] values, Vector3D centre) {
        double[] distances = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            distances[i] = values[i] - normals.get(i).dot(centre);
        }
        Arrays.sort(distances);
        return distances;
    }

    /** The largest smallest distance among all points that have the same distance from four faces. */
    private static double largestByCorners(List<Vector3D> normals, double[] values) {
        double largest = 0;
        int count = values.length;
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
                for (int k = j + 1; k < count; k++) {
                    for (int l = k + 1; l < count; l++) {
                        largest = Math.max(largest, atCorner(normals, values, i, j, k, l));
                    }
                }
            }
        }
        return largest;
    }

    private static double atCorner(List<Vector3D> normals, double[] values, int... faces) {
        double[][] rows = new double[4][];
        double[] sides = new double[4];
        for (int i = 0; i < 4; i++) {
            Vector3D normal = normals.get(faces[i]);
            rows[i] = new double[] {normal.getX(), normal.getY(), normal.getZ(), 1};
            sides[i] = values[faces[i]];
        }
        DecompositionSolver solver = new LUDecomposition(MatrixUtils.createRealMatrix(rows), 1e-9).getSolver();
        if (!solver.isNonSingular()) {
            return 0;
        }
        double[] point = solver.solve(new ArrayRealVector(sides)).toArray();
        return distances(normals, values, Vector3D.of(point[0], point[1], point[2]))[0];
    }

    @ParameterizedTest
    @ValueSource(strings = {"tetrahedron", "cube", "dodecahedron", "truncated-octahedron", "rhombic-dodecahedron"})
    void noOtherCornerOfTheProgramLeavesMoreRoom(String name) {
        Design design = Designs.of(name).build();
        List<Vector3D> normals = normals(design.solid());
        Random random = new Random(5);
        for (int i = 0; i < 20; i++) {
            double[] values = uneven(design, random);
            RoomiestFit.Found found = RoomiestFit.of(readings(values), normals);
            assertEquals(largestByCorners(normals, values), found.distance(), 1e-9);
            assertEquals(
                    found.distance(), distances(normals, values, found.centre().centre())[0], 1e-9);
        }
    }

    /** Whether some distances, from the smallest on, are larger than others at the first one that differs. */
    private static boolean betters(double[] some, double[] others) {
        for (int i = 0; i < some.length; i++) {
            if (Math.abs(some[i] - others[i]) > 1e-8) {
                return some[i] > others[i];
            }
        }
        return false;
    }

    @ParameterizedTest
    @MethodSource("solids")
    void noCentreBesideItHasLargerDistances(String name) {
        Design design = Designs.of(name).build();
        List<Vector3D> normals = normals(design.solid());
        Random random = new Random(6);
        double[] values = uneven(design, random);
        Vector3D centre = RoomiestFit.of(readings(values), normals).centre().centre();
        double[] best = distances(normals, values, centre);
        for (int i = 0; i < 5000; i++) {
            Vector3D step = Vector3D.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
            // Along single faces, too, for a centre that is free within a plane.
            Vector3D normal = normals.get(random.nextInt(normals.size()));
            Vector3D within = i % 2 == 0 ? step : step.subtract(normal.multiply(normal.dot(step)));
            double[] beside =
                    distances(normals, values, centre.add(within.multiply(Math.pow(10, -4 * random.nextDouble()))));
            assertTrue(!betters(beside, best), () -> Arrays.toString(beside) + " " + Arrays.toString(best));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tetrahedron", "cube", "dodecahedron"})
    void uncertaintiesAreThoseOfTheReadings(String name) {
        Design design = Designs.of(name).build();
        List<Vector3D> normals = normals(design.solid());
        double[] values = uneven(design, new Random(7));
        RoomiestFit.Found found = RoomiestFit.of(readings(values), normals);
        double step = 1e-5;
        double distance = 0;
        double[] centre = new double[3];
        for (int i = 0; i < values.length; i++) {
            double[] more = values.clone();
            more[i] += step;
            RoomiestFit.Found moved = RoomiestFit.of(readings(more), normals);
            distance += Math.pow((moved.distance() - found.distance()) / step, 2);
            Vector3D by =
                    moved.centre().centre().subtract(found.centre().centre()).multiply(1 / step);
            double[] each = by.toArray();
            for (int j = 0; j < 3; j++) {
                centre[j] += each[j] * each[j];
            }
        }
        double reading = RESOLUTION / Math.sqrt(12);
        assertEquals(Math.sqrt(distance) * reading, found.uncertainty(), 1e-6);
        for (int j = 0; j < 3; j++) {
            LinearCentre linear = found.centre();
            assertEquals(Math.sqrt(centre[j]) * reading, linear.uncertainty(linear.along(AXES.get(j))), 1e-6);
        }
    }

    @ParameterizedTest
    @MethodSource("solids")
    void theCentreOfAPerfectShellIsFound(String name) {
        Design design = Designs.of(name).build();
        List<Vector3D> normals = normals(design.solid());
        Vector3D centre = Vector3D.of(0.3, -0.2, 0.6);
        double[] values = design.solid().faces().stream()
                .mapToDouble(face -> JointLengths.panel(design, face.kind()).faceDistance()
                        + design.solid().normal(face).dot(centre))
                .toArray();
        RoomiestFit.Found found = RoomiestFit.of(readings(values), normals);
        assertEquals(0, found.centre().centre().distance(centre), 1e-8);
        assertEquals(design.smallestFaceDistance(), found.distance(), 1e-9);
    }

    @Test
    @DisplayName("hand calculation: a proud face moves the best centre and not that of the largest sphere")
    void aProudFaceLeavesTheRoomAsItIs() {
        double[] distances = new double[12];
        Arrays.fill(distances, 88.9);
        distances[4] += 0.6;
        CentreDiagnosis shell = Diagnoses.of(Designs.example("dodecahedron-with-land"))
                .distances(3, RESOLUTION, distances)
                .diagnose()
                .faceDistances();
        Roomiest roomiest = shell.roomiest();
        assertEquals(177.8, roomiest.largestDiameter().value(), 1e-9);
        assertEquals(3, roomiest.discs().face());
        assertTrue(shell.largestDiameter().value() < 177.7);
    }

    @Test
    void facesOnOneSideLeaveTheCentreFree() {
        Solid solid = Designs.of("cuboctahedron").build().solid();
        List<Vector3D> upper = new ArrayList<>();
        for (Vector3D normal : normals(solid)) {
            if (normal.dot(Vector3D.of(0.1, 0.2, 1)) > 0.05) {
                upper.add(normal);
            }
        }
        double[] values = new double[upper.size()];
        Arrays.fill(values, 100);
        assertTrue(upper.size() >= 4);
        assertNull(RoomiestFit.of(readings(values), upper));
    }
}
