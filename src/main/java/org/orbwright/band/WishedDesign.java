package org.orbwright.band;

import static java.util.Objects.requireNonNullElse;
import static java.util.Objects.requireNonNullElseGet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Places;
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

    private final SolveRequest request;
    private final DesignRequest written;
    private final int lamination;
    private final Panel panel;
    private final Design design;
    private final BandSet set;
    private final WishRequest[] wishes;
    /** The part of the rest that each band takes, all of them together 1; 0 for a band with a wish of its own. */
    private final double[] parts;

    private WishedDesign(
            SolveRequest request,
            DesignRequest written,
            int lamination,
            Design design,
            Panel panel,
            BandSet set,
            WishRequest[] wishes) {
        this.request = request;
        this.written = written;
        this.lamination = lamination;
        this.design = design;
        this.panel = panel;
        this.set = set;
        this.wishes = wishes;
        this.parts = parts(wishes);
    }

    static WishedDesign of(SolveRequest request, DesignRequest written) {
        int lamination = lamination(request, written);
        List<BandRequest> bands = written.laminations().get(lamination).bands();
        WishRequest[] wishes = byBand(request, bands.size());
        Design design = Design.of(with(written, lamination, placeholder(bands)));
        Panel panel = design.panels().stream()
                .filter(p -> p.lamination().index() == lamination)
                .findFirst()
                .orElseThrow();
        if (request.face() != null && !request.face().equals(panel.face())) {
            throw unknownFace(request, 0);
        }
        BandSet set =
                requireNonNullElseGet(request.set(), () -> panel.lamination().used(design.set(null)));
        if (set == BandSet.INVERTED) {
            Collections.reverse(Arrays.asList(wishes));
        }
        return new WishedDesign(request, written, lamination, design, panel, set, wishes);
    }

    /**
     * The widths are what is looked for: one band over the whole lamination stands for all of them meanwhile. A second
     * one without a width keeps the lamination from reading the same from both edges.
     */
    private static List<BandRequest> placeholder(List<BandRequest> bands) {
        String species = bands.get(0).species();
        BandRequest whole = new BandRequest(species, null);
        return bands.size() == 1 ? List.of(whole) : List.of(whole, new BandRequest(species, 0.0));
    }

    private static double[] parts(WishRequest[] wishes) {
        double[] parts = new double[wishes.length];
        double sum = 0;
        for (int i = 0; i < wishes.length; i++) {
            parts[i] = wishes[i].measure() == Measure.REST ? requireNonNullElse(wishes[i].value(), 1.0) : 0;
            sum += parts[i];
        }
        for (int i = 0; i < wishes.length; i++) {
            parts[i] /= sum;
        }
        return parts;
    }

    LaminationView view() {
        return new LaminationView(design, panel);
    }

    int count() {
        return wishes.length;
    }

    boolean isRest(int place) {
        return measure(place) == Measure.REST;
    }

    /** The first place from the base that takes of the rest. */
    int firstRest() {
        int place = 0;
        while (!isRest(place)) {
            place++;
        }
        return place;
    }

    /** The last place from the base that takes of the rest. */
    int lastRest() {
        int place = count() - 1;
        while (!isRest(place)) {
            place--;
        }
        return place;
    }

    /** The part of the rest that a band takes, 0 to 1; 0 for a band with a wish of its own. */
    double part(int place) {
        return parts[place];
    }

    /** The least width of the whole rest, in millimetres, with which no part of it is too narrow. */
    double smallestRest() {
        double least = 1;
        for (int place = 0; place < count(); place++) {
            least = isRest(place) ? Math.min(least, parts[place]) : least;
        }
        return unit().toMillimetres(SMALLEST_WIDTH) / least;
    }

    BandSet set() {
        return set;
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
        return set == BandSet.UPRIGHT ? inLamination : count() - 1 - inLamination;
    }

    int number(int place) {
        return wishes[place].band();
    }

    String species(int place) {
        return written.laminations()
                .get(lamination)
                .bands()
                .get(number(place) - 1)
                .species();
    }

    Measure measure(int place) {
        return wishes[place].measure();
    }

    boolean isShare(int place) {
        return measure(place) == Measure.SHARE_OF_SPHERE || isRest(place);
    }

    /** The wish of a band that is not of the rest, in millimetres or as a share. */
    double value(int place) {
        double value = wishes[place].value();
        return isShare(place) ? value : unit().toMillimetres(value);
    }

    double toWishUnit(int place, double value) {
        return isShare(place) ? value : value * Quantity.LENGTH.factor(unit());
    }

    String path(int place) {
        return "/solve/wishes/" + request.wishes().indexOf(wishes[place]);
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

    /**
     * The design with the widths between the given edges; the last band of the rest keeps none and takes what is left.
     */
    DesignRequest designWith(double[] edges) {
        int open = set == BandSet.UPRIGHT ? lastRest() : firstRest();
        List<BandRequest> bands = new ArrayList<>();
        for (int i = 0; i < count(); i++) {
            int place = place(i);
            double width = unit().fromMillimetres(edges[place + 1] - edges[place]);
            bands.add(new BandRequest(species(place), place == open ? null : Double.valueOf(width)));
        }
        return with(written, lamination, bands);
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

    private static int lamination(SolveRequest request, DesignRequest written) {
        if (written.laminations() == null) {
            throw new ImpossibleDesignException(List.of(Violation.missing(
                    "/laminations", "laminations", "the search for widths depends", "the woods of the bands")));
        }
        List<LaminationRequest> laminations = written.laminations();
        int found = -1;
        int count = 0;
        for (int i = 0; i < laminations.size(); i++) {
            LaminationRequest lamination = laminations.get(i);
            boolean sameFace = request.face() == null
                    || lamination.face() == null
                    || request.face().equals(lamination.face());
            boolean samePlaces =
                    request.places() == null || request.places() == requireNonNullElse(lamination.places(), Places.ALL);
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

    private static ImpossibleDesignException unknownFace(SolveRequest request, int count) {
        return refuse(
                "/solve/face",
                "UNKNOWN_FACE",
                count == 0
                        ? "The design has no lamination for this face kind and these places."
                        : "The design has " + count + " laminations that this could mean.",
                request.face(),
                "the face, and where it has two laminations the places, of one of the design's laminations");
    }

    /** A wish for each band, in the order of the lamination; at least one of them the rest. */
    private static WishRequest[] byBand(SolveRequest request, int bands) {
        WishRequest[] wishes = new WishRequest[bands];
        List<WishRequest> written = requireNonNullElse(request.wishes(), List.of());
        for (int i = 0; i < written.size(); i++) {
            WishRequest wish = written.get(i);
            String path = "/solve/wishes/" + i;
            if (wish.band() > bands || wishes[wish.band() - 1] != null) {
                throw refuse(
                        path + "/band",
                        "WISHES_DO_NOT_MATCH",
                        "The lamination has " + bands + " bands, and each takes one wish at most.",
                        String.valueOf(wish.band()),
                        "each band from 1 to " + bands + " once");
            }
            if (wish.measure() != Measure.REST && wish.value() == null) {
                throw refuse(
                        path + "/value", "VALUE_DOES_NOT_FIT", "Every wish but REST takes a value.", null, "a value");
            }
            wishes[wish.band() - 1] = wish;
        }
        if (Arrays.stream(wishes).allMatch(wish -> wish != null && wish.measure() != Measure.REST)) {
            throw refuse(
                    "/solve/wishes",
                    "ONE_REST_NEEDED",
                    "Every band has a wish of its own, but together the bands fill the lamination."
                            + " At least one of them has to take the rest.",
                    String.valueOf(written.size()),
                    "at most " + (bands - 1) + " wishes other than REST");
        }
        for (int i = 0; i < bands; i++) {
            wishes[i] = wishes[i] == null ? WishRequest.rest(i + 1) : wishes[i];
        }
        return wishes;
    }

    private static DesignRequest with(DesignRequest design, int lamination, List<BandRequest> bands) {
        List<LaminationRequest> laminations = new ArrayList<>(design.laminations());
        LaminationRequest old = laminations.get(lamination);
        laminations.set(lamination, old.withBands(bands));
        return design.withLaminations(laminations);
    }
}
