package org.orbwright.movement;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Places;
import org.orbwright.design.Violation;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.movement.MovementRequest.ClimateRequest;
import org.orbwright.movement.MovementRequest.GrainRequest;
import org.orbwright.movement.MovementRequest.HomeRequest;

/** A movement that a test changes in one place: stock of 8 %, a home of 6 % to 10 %, flat-sawn until then. */
public final class Movements {
    private final Designs design;
    private ClimateRequest stock = content(8.0);
    private ClimateRequest driest = content(6.0);
    private ClimateRequest dampest = content(10.0);
    private final List<GrainRequest> grain = new ArrayList<>();

    private Movements(Designs design) {
        this.design = design;
    }

    /** The movement of a design. */
    public static Movements of(Designs design) {
        return new Movements(design);
    }

    /** A moisture content. */
    public static ClimateRequest content(Double percent) {
        return new ClimateRequest(null, null, percent);
    }

    /** Air. */
    public static ClimateRequest air(Double celsius, Double relativeHumidity) {
        return new ClimateRequest(celsius, relativeHumidity, null);
    }

    /** These moisture contents in percent. */
    public Movements moisture(double ofStock, double atDriest, double atDampest) {
        return stock(content(ofStock)).home(content(atDriest), content(atDampest));
    }

    /** This stock. */
    public Movements stock(ClimateRequest climate) {
        stock = climate;
        return this;
    }

    /** This home. */
    public Movements home(ClimateRequest dry, ClimateRequest damp) {
        driest = dry;
        dampest = damp;
        return this;
    }

    /** One more strip's grain. */
    public Movements grain(String face, Places places, int band, GrainOrientation orientation, Double ringAngle) {
        grain.add(new GrainRequest(face, places, band, orientation, ringAngle));
        return this;
    }

    /** The request. */
    public Document document() {
        return design.document(Section.MOVEMENT, request());
    }

    /** The section. */
    public MovementRequest request() {
        return new MovementRequest(stock, new HomeRequest(driest, dampest), grain.isEmpty() ? null : grain);
    }

    Movement move() {
        return MovementCalculator.calculate(request(), design.build());
    }

    /** The violations with which it is refused. */
    List<Violation> refusals() {
        return assertThrows(ImpossibleDesignException.class, this::move).violations();
    }
}
