package org.orbwright.band;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.WidthRequest.Measure;
import org.orbwright.band.WidthRequest.WishRequest;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;

/**
 * A request for widths, checked: the design without the widths that are looked for, and the wishes in the order in
 * which the bands lie from the base in the chosen set.
 */
final class WishedDesign {
    private static final int SHOWN_DECIMALS = 6;
    private static final double SMALLEST_WIDTH = 0.001;
    private static final double SHARE_ROUNDING = 1e-6;
    private static final double LENGTH_ROUNDING = 1e-4;

    private final WidthRequest request;
    private final int lamination;
    private final Panel panel;
    private final Design design;
    private final WishRequest[] wishes;
    private final int rest;

    private WishedDesign(WidthRequest request, int lamination, Design design, Panel panel, WishRequest[] wishes) {
        this.request = request;
        this.lamination = lamination;
        this.design = design;
        this.panel = panel;
        this.wishes = wishes;
        int found = -1;
        for (int i = 0; i < wishes.length; i++) {
            found = wishes[i].measure() == Measure.REST ? i : found;
        }
        this.rest = found;
    }

    static WishedDesign of(WidthRequest request) {
        int lamination = lamination(request);
        List<BandRequest> bands = request.design().laminations().get(lamination).bands();
        WishRequest[] wishes = ordered(request, bands.size());
        // The widths are what is looked for: one band over the whole lamination stands for all of them meanwhile.
        List<BandRequest> placeholder = List.of(new BandRequest(bands.get(0).species(), null));
        Design design = Design.of(with(request.design(), lamination, placeholder));
        Panel panel = design.panels().stream()
                .filter(p -> p.lamination().index() == lamination)
                .findFirst()
                .orElseThrow();
        if (request.face() != null && !request.face().equals(panel.face())) {
            throw unknownFace(request, 0);
        }
        return new WishedDesign(request, lamination, design, panel, wishes);
    }

    LaminationView view() {
        return new LaminationView(design, panel);
    }

    int count() {
        return wishes.length;
    }

    int rest() {
        return rest;
    }

    BandSet set() {
        return requireNonNullElse(request.set(), BandSet.UPRIGHT);
    }

    String face() {
        return panel.face();
    }

    LengthUnit unit() {
        return design.unit();
    }

    double step() {
        return request.step() == null ? 0 : unit().toMillimetres(request.step());
    }

    /** Place from the base, in the chosen set, of the band with this place in the lamination. */
    int place(int inLamination) {
        return set() == BandSet.UPRIGHT ? inLamination : count() - 1 - inLamination;
    }

    int number(int place) {
        return wishes[place].band();
    }

    String species(int place) {
        return request.design()
                .laminations()
                .get(lamination)
                .bands()
                .get(number(place) - 1)
                .species();
    }

    Measure measure(int place) {
        return wishes[place].measure();
    }

    boolean isShare(int place) {
        return measure(place) == Measure.SHARE_OF_SPHERE || measure(place) == Measure.REST;
    }

    /** The wish in millimetres, or as a share. */
    double value(int place) {
        double value = requireNonNullElse(wishes[place].value(), 0.0);
        return isShare(place) ? value : unit().toMillimetres(value);
    }

    double toWishUnit(int place, double value) {
        return isShare(place) ? value : value * Quantity.LENGTH.factor(unit());
    }

    String path(int place) {
        return "/wishes/" + request.wishes().indexOf(wishes[place]);
    }

    String say(double millimetres) {
        return design.say(millimetres);
    }

    String sayWish(int place, double value) {
        return isShare(place) ? Rounding.plain(100 * value, 2) + " % of the sphere" : say(value);
    }

    /** A wish that is not to be exceeded, rounded down. */
    String sayMost(int place, double value) {
        return isShare(place)
                ? Rounding.plain(Math.floor(value * 10_000) / 100, 2) + " % of the sphere"
                : design.sayAtMost(value);
    }

    /** The smallest width that a design accepts, in millimetres. */
    double smallestWidth() {
        return unit().toMillimetres(SMALLEST_WIDTH);
    }

    /** Half of what an answer is rounded to, and a little more: the most that was answered may be wished for. */
    double answerRounding(int place) {
        return isShare(place) ? SHARE_ROUNDING : LENGTH_ROUNDING;
    }

    String shown(double millimetres) {
        return Rounding.plain(unit().fromMillimetres(millimetres), SHOWN_DECIMALS);
    }

    String shownWish(int place, double value) {
        return Rounding.plain(toWishUnit(place, value), SHOWN_DECIMALS);
    }

    /** The design with the widths between the given edges; the band of the rest keeps none. */
    DesignRequest designWith(double[] edges) {
        List<BandRequest> bands = new ArrayList<>();
        for (int i = 0; i < count(); i++) {
            int place = place(i);
            double width = unit().fromMillimetres(edges[place + 1] - edges[place]);
            bands.add(new BandRequest(species(place), place == rest ? null : Double.valueOf(width)));
        }
        return with(request.design(), lamination, bands);
    }

    ImpossibleDesignException impossible(String path, String code, String message, String rejected, String allowed) {
        return refuse(path, code, message, rejected, allowed);
    }

    ImpossibleDesignException impossible(List<Violation> violations) {
        return new ImpossibleDesignException(violations);
    }

    private static ImpossibleDesignException refuse(
            String path, String code, String message, String rejected, String allowed) {
        return new ImpossibleDesignException(List.of(new Violation(path, code, message, rejected, allowed)));
    }

    private static int lamination(WidthRequest request) {
        List<LaminationRequest> laminations = request.design().laminations();
        int found = -1;
        int count = 0;
        for (int i = 0; i < laminations.size(); i++) {
            LaminationRequest lamination = laminations.get(i);
            boolean sameFace = request.face() == null
                    || lamination.face() == null
                    || request.face().equals(lamination.face());
            boolean samePlaces = request.places() == null || request.places() == lamination.places();
            if (sameFace && samePlaces) {
                found = i;
                count++;
            }
        }
        if (count == 1) {
            return found;
        }
        throw unknownFace(request, count);
    }

    private static ImpossibleDesignException unknownFace(WidthRequest request, int count) {
        return refuse(
                "/face",
                "UNKNOWN_FACE",
                count == 0
                        ? "The design has no lamination for this face kind and these places."
                        : "The design has " + count + " laminations that this could mean.",
                request.face(),
                "the face, and where it has two laminations the places, of one of the design's laminations");
    }

    /** The wishes in the order of the bands from the base, each band once and exactly one the rest. */
    private static WishRequest[] ordered(WidthRequest request, int bands) {
        boolean upright = requireNonNullElse(request.set(), BandSet.UPRIGHT) == BandSet.UPRIGHT;
        WishRequest[] ordered = new WishRequest[bands];
        int rests = 0;
        for (int i = 0; i < request.wishes().size(); i++) {
            WishRequest wish = request.wishes().get(i);
            String path = "/wishes/" + i;
            int place = upright ? wish.band() - 1 : bands - wish.band();
            if (wish.band() > bands || ordered[place] != null) {
                throw refuse(
                        path + "/band",
                        "WISHES_DO_NOT_MATCH",
                        "The lamination has " + bands + " bands, and each takes one wish.",
                        String.valueOf(wish.band()),
                        "each band from 1 to " + bands + " once");
            }
            if ((wish.measure() == Measure.REST) != (wish.value() == null)) {
                throw refuse(
                        path + "/value",
                        "VALUE_DOES_NOT_FIT",
                        "The rest takes no value, and every other wish takes one.",
                        wish.value() == null ? null : Rounding.plain(wish.value(), SHOWN_DECIMALS),
                        wish.value() == null ? "a value" : "no value");
            }
            rests += wish.measure() == Measure.REST ? 1 : 0;
            ordered[place] = wish;
        }
        if (request.wishes().size() != bands || rests != 1) {
            throw refuse(
                    "/wishes",
                    "ONE_REST_NEEDED",
                    "The lamination has " + bands
                            + " bands whose widths add up to a given measure: every band takes one"
                            + " wish, and exactly one of them has to take the rest.",
                    String.valueOf(request.wishes().size()),
                    bands + " wishes, one of them REST");
        }
        return ordered;
    }

    private static DesignRequest with(DesignRequest design, int lamination, List<BandRequest> bands) {
        List<LaminationRequest> laminations = new ArrayList<>(design.laminations());
        LaminationRequest old = laminations.get(lamination);
        laminations.set(lamination, old.withBands(bands));
        return design.withLaminations(laminations);
    }
}
