package org.orbwright.design;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.BlankRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.DesignRequest.PanelRequest;
import org.orbwright.design.DesignRequest.SawRequest;
import org.orbwright.design.DesignRequest.SizeRequest;
import org.orbwright.design.DesignRequest.SphereRequest;
import org.orbwright.quantity.LengthUnit;

/** A request that a test changes in one place; a plain dodecahedron of 180 mm across flats until then (invented). */
public final class RequestSketch {
    private LengthUnit unit = LengthUnit.MM;
    private String solid = "dodecahedron";
    private Integer copies;
    private SizeRequest size = new SizeRequest(SizeBy.ACROSS_FLATS, 180.0);
    private PanelRequest panel = new PanelRequest(28.0, null);
    private List<LaminationRequest> laminations = List.of(lamination(null, null, 14.0, null, 10.0));
    private Double diameter;
    private double allowance = 2;
    private double wall = 6;

    public static RequestSketch sketch() {
        return new RequestSketch();
    }

    /** A lamination of strips of the given widths, null for the rest, in a new wood each. */
    public static LaminationRequest lamination(String face, Double angle, Double... widths) {
        List<BandRequest> bands = new ArrayList<>();
        for (Double width : widths) {
            bands.add(new BandRequest("wood " + (bands.size() + 1), width));
        }
        return new LaminationRequest(face, angle, bands);
    }

    public RequestSketch unit(LengthUnit newUnit) {
        unit = newUnit;
        return this;
    }

    public RequestSketch solid(String name) {
        solid = name;
        return this;
    }

    public RequestSketch copies(int number) {
        copies = number;
        return this;
    }

    public RequestSketch size(SizeBy by, double value) {
        size = new SizeRequest(by, value);
        return this;
    }

    public RequestSketch panel(double thickness, Double land) {
        panel = new PanelRequest(thickness, land);
        return this;
    }

    public RequestSketch laminations(LaminationRequest... requests) {
        laminations = List.of(requests);
        return this;
    }

    public RequestSketch diameter(Double newDiameter) {
        diameter = newDiameter;
        return this;
    }

    public RequestSketch allowance(double newAllowance) {
        allowance = newAllowance;
        return this;
    }

    public RequestSketch wall(double newWall) {
        wall = newWall;
        return this;
    }

    public DesignRequest request() {
        return new DesignRequest(
                "a sketch",
                unit,
                solid,
                copies,
                null,
                null,
                null,
                size,
                panel,
                laminations,
                null,
                new SawRequest(3.2, null),
                new BlankRequest(584.0),
                new SphereRequest(diameter, allowance, wall));
    }

    public Design design() {
        return Design.of(request());
    }
}
