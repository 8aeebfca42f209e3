package org.orbwright.band;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.SphereSet;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;

/** A request for widths, checked: the design without the widths that are looked for, the wishes and the rests. */
final class WishedDesign {
    private static final int SHOWN_DECIMALS = 6;
    /** The least width of a band that a document may state, and a little more for rounding. */
    private static final double SMALLEST_WIDTH = 0.001 * (1 + 1e-6);

    /** Half of what an answer is rounded to, and a little more: the most that was answered may be wished for. */
    private static final double SHARE_ROUNDING = 1e-6;

    private static final double LENGTH_ROUNDING = 1e-4;
    private static final String MISMATCH = "WISHES_DO_NOT_MATCH";

    private final SolveRequest request;
    private final DesignRequest written;
    private final int lamination;
    private final int bands;
    private final Panel panel;
    private final Design design;
    private final LaminationView view;
    private final SphereSet set;
    private final List<Wish> wishes = new ArrayList<>();
    private final Rests rests;

    private WishedDesign(SolveRequest request, DesignRequest written) {
        this.request = request;
        this.written = written;
        this.lamination = WishedLamination.find(request, written);
        List<BandRequest> strips = written.laminations().get(lamination).bands();
        this.bands = strips.size();
        this.design = Design.of(with(placeholder(strips)));
        this.panel = panelOf(design);
        if (request.face() != null && !request.face().equals(panel.face())) {
            throw WishedLamination.unknown(request, 0);
        }
        SphereSet first = panel.lamination().sets() == 1
                ? SphereSet.UPRIGHT
                : design.spheres().get(0).set();
        this.set = requireNonNullElse(request.set(), first);
        this.view = new LaminationView(design, panel);
        checkSet(request.set(), "/solve/set");
        this.rests = new Rests(read());
    }

    static WishedDesign of(SolveRequest request, DesignRequest written) {
        return new WishedDesign(request, written);
    }

    /**
     * The widths are what is looked for: one band over the whole lamination stands for all of them meanwhile. A second
     * one without a width keeps the lamination from reading the same from both edges.
     */
    private static List<BandRequest> placeholder(List<BandRequest> strips) {
        String species = strips.get(0).species();
        BandRequest whole = new BandRequest(species, null);
        return strips.size() == 1 ? List.of(whole) : List.of(whole, new BandRequest(species, 0.0));
    }

    /** Reads the wishes, and answers in what proportion each band takes of the rest. */
    private double[] read() {
        double[] proportions = new double[bands];
        Set<Integer> wishedFor = new HashSet<>();
        Set<List<Object>> taken = new HashSet<>();
        List<WishRequest> all = requireNonNullElse(request.wishes(), List.of());
        for (int i = 0; i < all.size(); i++) {
            WishRequest wish = all.get(i);
            SphereSet about = requireNonNullElse(wish.set(), set);
            check(wish, "/solve/wishes/" + i);
            boolean rest = wish.measure() == Measure.REST;
            int band = wish.band() - 1;
            boolean twice = !taken.add(List.of(band, wish.measure(), rest ? set : about));
            if (twice || (rest ? wishedFor.contains(band) : proportions[band] > 0)) {
                throw refuse(
                        "/solve/wishes/" + i,
                        MISMATCH,
                        twice
                                ? "Band " + wish.band() + " has two wishes of this measure"
                                        + (rest ? "." : " for this set.")
                                : "Band " + wish.band() + " is REST and has a wish of its own as well.",
                        String.valueOf(wish.band()),
                        twice ? "one wish for a band, a measure and a set" : "REST or other wishes for a band");
            }
            wishedFor.add(band);
            if (rest) {
                proportions[band] = requireNonNullElse(wish.value(), 1.0);
            } else {
                wishes.add(checked(wish, i, about));
            }
        }
        boolean anyRest = false;
        for (int band = 0; band < bands; band++) {
            proportions[band] = wishedFor.contains(band) ? proportions[band] : 1;
            anyRest |= proportions[band] > 0;
        }
        proportions[bands - 1] = anyRest ? proportions[bands - 1] : 1;
        return proportions;
    }

    private void check(WishRequest wish, String path) {
        if (wish.band() > bands) {
            throw refuse(
                    path + "/band",
                    MISMATCH,
                    "The lamination has " + bands + " bands.",
                    String.valueOf(wish.band()),
                    "a band from 1 to " + bands);
        }
        if (wish.measure() != Measure.REST && wish.value() == null) {
            throw refuse(path + "/value", "VALUE_DOES_NOT_FIT", "Every wish but REST takes a value.", null, "a value");
        }
        if (wish.measure() == Measure.REST && wish.set() != null) {
            throw refuse(
                    path + "/set",
                    "NOT_APPLICABLE",
                    "A REST is one width for all spheres, so it takes no set.",
                    wish.set().name(),
                    "nothing");
        }
        checkSet(wish.set(), path + "/set");
    }

    private void checkSet(SphereSet named, String path) {
        boolean mixed = design.spheres().stream().anyMatch(kind -> kind.set() == SphereSet.MIXED);
        if (named == SphereSet.MIXED && !mixed) {
            throw refuse(
                    path,
                    "SET_NOT_MADE",
                    "The document's sets make no sphere with panels of both sets.",
                    named.name(),
                    "UPRIGHT or INVERTED; or MIXED beside sets MIXED or BY_PANEL");
        }
    }

    /** Refuses a wish that could not even come true alone. */
    private Wish checked(WishRequest wish, int place, SphereSet about) {
        boolean share = wish.measure() == Measure.SHARE_OF_SPHERE;
        double value = share ? wish.value() : unit().toMillimetres(wish.value());
        List<DoubleUnaryOperator> curves = view.curves(wish.measure(), about);
        double most = LaminationView.shown(curves, 0, view.width());
        if (value > most + (share ? SHARE_ROUNDING : LENGTH_ROUNDING)) {
            throw refuse(
                    "/solve/wishes/" + place + "/value",
                    "WISH_TOO_LARGE",
                    "Band " + wish.band() + " cannot show " + say(share, value) + ": over the whole segment it shows "
                            + sayMost(share, most) + " at most.",
                    Rounding.plain(wish.value(), SHOWN_DECIMALS),
                    "at most " + sayMost(share, most));
        }
        return new Wish(wishes.size(), place, wish.band() - 1, about, wish.measure(), value, curves, most);
    }

    private String say(boolean share, double value) {
        return share ? Rounding.plain(100 * value, 2) + " % of the sphere" : design.say(value);
    }

    /** A wish that is not to be exceeded, rounded down. */
    private String sayMost(boolean share, double value) {
        return share
                ? Rounding.plain(Math.floor(value * 10_000) / 100, 2) + " % of the sphere"
                : design.sayAtMost(value);
    }

    LaminationView view() {
        return view;
    }

    List<Wish> wishes() {
        return wishes;
    }

    Rests rests() {
        return rests;
    }

    /** The spheres that a wish without a set is about. */
    SphereSet set() {
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

    /** The least width of a band, in millimetres. */
    double smallestWidth() {
        return unit().toMillimetres(SMALLEST_WIDTH);
    }

    String species(int band) {
        return written.laminations().get(lamination).bands().get(band).species();
    }

    /** The factor from millimetres, or a share, to the unit in which a wish is written. */
    double factor(Wish wish) {
        return wish.isShare() ? 1 : Quantity.LENGTH.factor(unit());
    }

    /** The panel of the lamination that is solved for. */
    Panel panelOf(Design other) {
        return other.panels().stream()
                .filter(p -> p.lamination().index() == lamination)
                .findFirst()
                .orElseThrow();
    }

    /**
     * The design with the widths between the given cuts; the last band of the rest keeps none and takes what is left.
     */
    DesignRequest designWith(double[] cuts) {
        List<BandRequest> strips = new ArrayList<>();
        for (int band = 0; band < bands; band++) {
            double width = unit().fromMillimetres(cuts[band + 1] - cuts[band]);
            if (request.step() != null && !rests.takes(band)) {
                width = Math.rint(width / request.step()) * request.step();
            }
            strips.add(new BandRequest(species(band), band == rests.last() ? null : Double.valueOf(width)));
        }
        return with(strips);
    }

    private DesignRequest with(List<BandRequest> strips) {
        List<LaminationRequest> laminations = new ArrayList<>(written.laminations());
        LaminationRequest old = laminations.get(lamination);
        laminations.set(lamination, old.withBands(strips));
        return written.withLaminations(laminations);
    }

    /**
     * Refuses bands that do not fit.
     *
     * @param stepAlone whether they fit without the step
     */
    ImpossibleDesignException tooNarrow(boolean stepAlone) {
        return !stepAlone
                ? refuse(
                        "/laminations/" + lamination + "/bands",
                        "TOO_MANY_BANDS",
                        "Bands of the smallest width do not fit into the lamination beside each other.",
                        String.valueOf(bands),
                        "fewer bands, or rests in a more even proportion")
                : refuse(
                        "/solve/step",
                        "STEP_TOO_COARSE",
                        "Bands of one step each leave nothing for the rest.",
                        Rounding.plain(request.step(), SHOWN_DECIMALS),
                        "a finer step");
    }

    private static ImpossibleDesignException refuse(
            String path, String code, String message, String rejected, String allowed) {
        return new ImpossibleDesignException(List.of(new Violation(path, code, message, rejected, allowed)));
    }
}
