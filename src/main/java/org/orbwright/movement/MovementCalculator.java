package org.orbwright.movement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.PlacedPiece;
import org.orbwright.design.Violation;
import org.orbwright.movement.LaminationMovement.BandJoint;
import org.orbwright.movement.LaminationMovement.BandMovement;
import org.orbwright.movement.LaminationMovement.SegmentMovement;
import org.orbwright.movement.Movement.AngleChange;
import org.orbwright.movement.Movement.LengthChange;
import org.orbwright.movement.Movement.MoistureContents;
import org.orbwright.movement.Movement.OpensAt;
import org.orbwright.movement.Movement.PanelGap;
import org.orbwright.movement.Movement.PanelMovement;
import org.orbwright.segment.Sums;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.sphere.SphereSizing.FaceSizing;
import org.orbwright.wood.WoodSpecies;

/**
 * Moves the wood of a design from the stock's moisture content to those of the home, as {@link DimensionalChange} says.
 * Wood moves square to its grain, along a strip's width and thickness; its movement along the grain is neglected. So is
 * the restraint of neighbouring strips: each moves as if it lay free, and what is answered for the joints is what the
 * glue has to hold.
 */
public final class MovementCalculator {
    private final Design design;
    private final MoistureContents moisture;
    private final Grain grain;
    private final SphereSizing sphere;

    private MovementCalculator(Design design, MoistureContents moisture, Grain grain) {
        this.design = design;
        this.moisture = moisture;
        this.grain = grain;
        this.sphere = SphereCalculator.calculate(design);
    }

    /**
     * The movement of a design's wood.
     *
     * @param asked a section that keeps its Bean Validation constraints
     * @throws ImpossibleDesignException if moisture or grain cannot be as they are stated
     */
    public static Movement calculate(MovementRequest asked, Design design) {
        design.require("the movement of the wood depends", DesignPart.THICKNESS, DesignPart.LAMINATIONS);
        MovementRequest request = asked.filled();
        List<Violation> broken = new ArrayList<>();
        MoistureContents moisture = Moisture.of(request, broken);
        Grain grain = Grain.of(request, design, broken);
        if (!broken.isEmpty()) {
            throw new ImpossibleDesignException(broken);
        }
        return new MovementCalculator(design, moisture, grain).movement();
    }

    private Movement movement() {
        Map<Panel, LaminationMovement> laminations = new LinkedHashMap<>();
        for (Panel panel : design.panels()) {
            laminations.put(panel, lamination(panel));
        }
        return new Movement(
                moisture, List.copyOf(laminations.values()), panels(laminations), WoodMass.of(design, moisture));
    }

    private LaminationMovement lamination(Panel panel) {
        List<BandMovement> bands = new ArrayList<>();
        Double toDriest = 0.0;
        Double toDampest = 0.0;
        for (Band band : panel.lamination().bands()) {
            BandMovement moved = band(panel, bands.size() + 1, band);
            bands.add(moved);
            LengthChange change = moved.widthChange();
            toDriest = Sums.add(toDriest, change == null ? null : change.toDriest());
            toDampest = Sums.add(toDampest, change == null ? null : change.toDampest());
        }
        return new LaminationMovement(
                panel.face(),
                panel.places(),
                panel.lamination().width(),
                toDriest == null ? null : LengthChange.of(toDriest, toDampest),
                bands,
                joints(panel, bands),
                panel.pieces().stream()
                        .map(piece -> segment(panel, piece, bands))
                        .toList());
    }

    private BandMovement band(Panel panel, int number, Band band) {
        double layer = design.thickness() / design.layers();
        double ringAngle = grain.ringAngle(panel, number);
        Optional<WoodSpecies> wood = design.woods().find(band.species());
        Double acrossWidth = coefficient(wood, ringAngle);
        Double throughThickness = coefficient(wood, Math.PI / 2 - ringAngle);
        return new BandMovement(
                number,
                band.species(),
                ringAngle,
                acrossWidth,
                throughThickness,
                band.width(),
                change(band.width(), acrossWidth),
                layer,
                change(layer, throughThickness));
    }

    private static Double coefficient(Optional<WoodSpecies> wood, double angleToRings) {
        return wood.map(known -> known.coefficient(angleToRings))
                .flatMap(known -> known.stream().boxed().findFirst())
                .orElse(null);
    }

    private LengthChange change(double length, Double coefficient) {
        return coefficient == null
                ? null
                : LengthChange.of(length * moisture.toDriest(coefficient), length * moisture.toDampest(coefficient));
    }

    private List<BandJoint> joints(Panel panel, List<BandMovement> bands) {
        List<BandJoint> joints = new ArrayList<>();
        double wall = wall(panel);
        for (int i = 0; i + 1 < bands.size(); i++) {
            Double one = bands.get(i).thicknessCoefficient();
            Double other = bands.get(i + 1).thicknessCoefficient();
            boolean known = one != null && other != null;
            double strain = known ? moisture.toWorse(one) - moisture.toWorse(other) : 0;
            joints.add(new BandJoint(
                    i + 1,
                    known ? Double.valueOf(strain * design.thickness()) : null,
                    known && wall > 0 ? Double.valueOf(strain * wall) : null));
        }
        return joints;
    }

    private double wall(Panel panel) {
        return sphere.faces().stream()
                .filter(face -> face.face().equals(panel.face()))
                .map(FaceSizing::wall)
                .findFirst()
                .orElseThrow()
                .faceCentre();
    }

    private SegmentMovement segment(Panel panel, Piece piece, List<BandMovement> bands) {
        MovedSegment moved = new MovedSegment(panel.lamination(), piece, coefficients(bands));
        return new SegmentMovement(
                piece.segment(), piece.mirrored(), piece.turned(), moved.tipAngle(), angleChange(moved));
    }

    private AngleChange angleChange(MovedSegment segment) {
        return segment.known()
                ? AngleChange.of(
                        segment.tipAngleChange(moisture::toDriest), segment.tipAngleChange(moisture::toDampest))
                : null;
    }

    private static List<Double> coefficients(List<BandMovement> bands) {
        return bands.stream().map(BandMovement::widthCoefficient).toList();
    }

    private List<PanelMovement> panels(Map<Panel, LaminationMovement> laminations) {
        List<PanelMovement> panels = new ArrayList<>();
        for (Panel panel : design.facePanels()) {
            panels.add(panel(panel, false, laminations));
            if (panel.kind().mirroredCount() > 0) {
                panels.add(panel(panel, true, laminations));
            }
        }
        return panels;
    }

    private PanelMovement panel(Panel panel, boolean mirrored, Map<Panel, LaminationMovement> laminations) {
        Double toDriest = 0.0;
        Double toDampest = 0.0;
        for (PlacedPiece placed : PlacedPiece.around(design, panel.face(), mirrored)) {
            List<BandMovement> bands = laminations.get(placed.panel()).bands();
            AngleChange change =
                    angleChange(new MovedSegment(placed.panel().lamination(), placed.piece(), coefficients(bands)));
            toDriest = Sums.add(toDriest, change == null ? null : change.toDriest());
            toDampest = Sums.add(toDampest, change == null ? null : change.toDampest());
        }
        boolean known = toDriest != null && toDampest != null;
        return new PanelMovement(
                panel.face(),
                mirrored,
                panel.baseDistance(),
                known ? AngleChange.of(toDriest, toDampest) : null,
                known ? gap(panel, toDriest) : null,
                known ? gap(panel, toDampest) : null);
    }

    /** Tip angles that are together less than the circle leave a wedge that is open at the rim. */
    private static PanelGap gap(Panel panel, double angleSumChange) {
        OpensAt moved = angleSumChange < 0 ? OpensAt.RIM : OpensAt.TIPS;
        return new PanelGap(
                Math.abs(angleSumChange) * panel.baseDistance(), angleSumChange == 0 ? OpensAt.NOWHERE : moved);
    }
}
