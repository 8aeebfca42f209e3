package org.orbwright.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.CentreDiagnosis.FaceDeviation;
import org.orbwright.diagnosis.CentreDiagnosis.Roomiest;
import org.orbwright.diagnosis.DiagnosisRequest.FaceDistancesRequest;
import org.orbwright.diagnosis.DiagnosisRequest.FaceReadingRequest;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.tolerance.JointLengths;

/**
 * Fits a solid similar to the designed one to distances of its faces from a point of reference: a face with the normal
 * n that should be at h is at {@code (1 + k) h + n c}, where c is the centre and k the share by which the solid is
 * larger. Weighted least squares for the four unknowns; every answer is linear in the readings to first order, so its
 * uncertainty follows from its coefficients.
 */
final class CentreFit {
    private static final String POINTER = "/diagnosis/faceDistances";
    private static final int UNKNOWNS = 4;
    /** The smallest singular value over the largest below which the faces do not fix the centre. */
    private static final double DEGENERATE = 1e-6;

    private final FaceDistancesRequest request;
    private final Design design;
    private final Checks checks;
    private final Solid solid;
    private final List<Reading> readings = new ArrayList<>();
    private final List<Vector3D> normals = new ArrayList<>();
    private final List<Double> designed = new ArrayList<>();
    /** How each unknown depends on each reading; the last is how much larger the smallest face distance is. */
    private double[][] solution;

    private LinearCentre best;

    private CentreFit(FaceDistancesRequest request, Design design, Checks checks) {
        this.request = request;
        this.design = design;
        this.checks = checks;
        this.solid = design.solid();
    }

    /** What the distances say, or null if they break a rule, which is noted. */
    static CentreDiagnosis of(FaceDistancesRequest request, Design design, Checks checks) {
        CentreFit fit = new CentreFit(request, design, checks);
        int before = checks.broken().size();
        fit.read();
        return checks.broken().size() == before && fit.solve() ? fit.diagnosis() : null;
    }

    private int discFace() {
        return request.discFace() == null ? 0 : Numbering.place(request.discFace());
    }

    private void read() {
        checkPlace(discFace(), POINTER + "/discFace");
        Set<Integer> known = new HashSet<>();
        for (int i = 0; i < request.faces().size(); i++) {
            FaceReadingRequest asked = request.faces().get(i);
            String pointer = POINTER + "/faces/" + i;
            int place = Numbering.place(asked.face());
            if (!checkPlace(place, pointer + "/face")) {
                continue;
            }
            if (!known.add(place)) {
                checks.refuse(
                        pointer + "/face",
                        "FACE_TWICE",
                        "Face " + asked.face() + " is stated before.",
                        asked.face().toString(),
                        "each face once");
            }
            Face face = solid.faces().get(place);
            double distance = JointLengths.panel(design, face.kind()).faceDistance();
            Reading reading = checks.length(asked.value(), asked.resolution());
            checks.near(reading, distance, pointer + "/value");
            checks.fine(asked.value(), asked.resolution(), pointer);
            readings.add(reading);
            normals.add(solid.normal(face));
            designed.add(distance);
        }
    }

    private boolean checkPlace(int face, String pointer) {
        int faces = solid.faces().size();
        if (face < faces) {
            return true;
        }
        checks.refuse(
                pointer,
                "UNKNOWN_FACE",
                "The solid has no face " + Numbering.of(face) + ".",
                Integer.toString(Numbering.of(face)),
                "1 to " + faces + ", as /v1/solids/" + solid.name() + " numbers them");
        return false;
    }

    /** Solves the normal equations through singular values, which tell whether there is one answer. */
    private boolean solve() {
        int rows = readings.size();
        double[][] plain = new double[rows][];
        double[][] weighted = new double[rows][UNKNOWNS];
        for (int i = 0; i < rows; i++) {
            Vector3D normal = normals.get(i);
            plain[i] = new double[] {
                normal.getX(), normal.getY(), normal.getZ(), designed.get(i) / design.smallestFaceDistance()
            };
            for (int j = 0; j < UNKNOWNS; j++) {
                weighted[i][j] = plain[i][j] / readings.get(i).uncertainty();
            }
        }
        double[] singular = new SingularValueDecomposition(MatrixUtils.createRealMatrix(plain)).getSingularValues();
        if (singular[UNKNOWNS - 1] < DEGENERATE * singular[0]) {
            checks.refuse(
                    POINTER + "/faces",
                    "FACES_DO_NOT_FIX_CENTRE",
                    "These faces do not tell a shell that is larger from one that is shifted: their planes meet in one"
                            + " point, or all stand upright on one plane.",
                    rows + " faces",
                    "four or more faces on all sides of the solid");
            return false;
        }
        RealMatrix inverse = new SingularValueDecomposition(MatrixUtils.createRealMatrix(weighted))
                .getSolver()
                .getInverse();
        solution = inverse.getData();
        for (double[] unknown : solution) {
            for (int i = 0; i < rows; i++) {
                unknown[i] /= readings.get(i).uncertainty();
            }
        }
        Vector3D centre = Vector3D.of(value(solution[0]), value(solution[1]), value(solution[2]));
        best = new LinearCentre(centre, Arrays.copyOf(solution, 3), readings);
        return true;
    }

    private CentreDiagnosis diagnosis() {
        int rows = readings.size();
        double[] deviations = new double[rows];
        List<FaceDeviation> listed = new ArrayList<>();
        int highest = 0;
        int lowest = 0;
        int nearest = 0;
        int nearestNow = 0;
        for (int i = 0; i < rows; i++) {
            deviations[i] = value(deviation(i));
            listed.add(new FaceDeviation(Numbering.place(request.faces().get(i).face()), deviations[i]));
            highest = deviations[i] > deviations[highest] ? i : highest;
            lowest = deviations[i] < deviations[lowest] ? i : lowest;
            nearest = room(i) < room(nearest) ? i : nearest;
            nearestNow = readings.get(i).value() < readings.get(nearestNow).value() ? i : nearestNow;
        }
        LargestSphere room =
                LargestSphere.of(design, 2 * room(nearest), 2 * best.uncertainty(roomCoefficients(nearest)));
        Reading least = readings.get(nearestNow);
        LargestSphere now = LargestSphere.of(design, 2 * least.value(), 2 * least.uncertainty());
        double[] larger = LinearCentre.scaled(solution[UNKNOWNS - 1], 2);
        return new CentreDiagnosis(
                rows,
                solid.faces().size(),
                1 + value(larger) / (2 * design.smallestFaceDistance()),
                LengthEstimate.of(value(larger), best.uncertainty(larger)),
                best.offset(),
                best.discs(solid, discFace()),
                rows == UNKNOWNS ? null : outOfRound(deviations, highest, lowest),
                room.diameter(),
                room.limitedBy(),
                now.diameter(),
                now.limitedBy(),
                roomiest(),
                listed);
    }

    private LengthEstimate outOfRound(double[] deviations, int highest, int lowest) {
        double[] between = LinearCentre.sum(deviation(highest), deviation(lowest), -1);
        return LengthEstimate.of(deviations[highest] - deviations[lowest], best.uncertainty(between));
    }

    private Roomiest roomiest() {
        RoomiestFit.Found found = RoomiestFit.of(readings, normals);
        if (found == null) {
            return null;
        }
        LargestSphere room = LargestSphere.of(design, 2 * found.distance(), 2 * found.uncertainty());
        return new Roomiest(
                found.centre().offset(), found.centre().discs(solid, discFace()), room.diameter(), room.limitedBy());
    }

    /** How far a face is from the best centre. */
    private double room(int face) {
        return readings.get(face).value() - normals.get(face).dot(best.centre());
    }

    private double[] roomCoefficients(int face) {
        double[] room = LinearCentre.scaled(best.along(normals.get(face)), -1);
        room[face] += 1;
        return room;
    }

    /** How far a face is off the fitted solid, as coefficients of the readings. */
    private double[] deviation(int face) {
        double share = designed.get(face) / design.smallestFaceDistance();
        return LinearCentre.sum(roomCoefficients(face), solution[UNKNOWNS - 1], -share);
    }

    /** A linear combination of the readings' deviations from the design. */
    private double value(double[] coefficients) {
        double value = 0;
        for (int i = 0; i < coefficients.length; i++) {
            value += coefficients[i] * (readings.get(i).value() - designed.get(i));
        }
        return value;
    }
}
