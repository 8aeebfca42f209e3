package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.Sets;
import org.orbwright.segment.Yield;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SegmentYield;
import org.orbwright.segment.Yield.SpeciesYield;
import org.orbwright.wood.WoodTable;

/** What the yield of a design gets wrong or nearly wrong. */
final class YieldFindings {
    private YieldFindings() {}

    static List<Finding> of(Design design, Yield yield) {
        List<Finding> findings = new ArrayList<>();
        oneSetOnly(design).ifPresent(findings::add);
        for (int i = 0; i < yield.laminations().size(); i++) {
            Panel panel = design.panels().get(i);
            LaminationYield lamination = yield.laminations().get(i);
            setLeftOver(design, panel, lamination).ifPresent(findings::add);
            nothingToSpare(design, panel, lamination).ifPresent(findings::add);
        }
        for (SpeciesYield species : yield.species()) {
            if (species.density() == null) {
                findings.add(unknownDensity(design, species.species()));
            }
        }
        return findings;
    }

    static Finding unknownDensity(Design design, String species) {
        return FindingCode.DENSITY_UNKNOWN.note(
                "The density of " + species + " is not known, so masses with it are left out. State it in woods."
                        + Words.known(WoodTable.similar(
                                species, wood -> wood.specificGravity().isPresent())),
                design.woodFields().get(species));
    }

    private static Optional<Finding> oneSetOnly(Design design) {
        Sets sets = design.request().sets();
        if (design.hasTwoSets() || sets == Sets.TWINS || sets == Sets.UPRIGHT) {
            return Optional.empty();
        }
        boolean straight = design.panels().stream().anyMatch(p -> p.lamination().straight());
        boolean tilted = design.panels().stream().anyMatch(p -> !p.lamination().straight());
        String reason = (tilted ? "are tilted" : "")
                + (tilted && straight ? " or " : "")
                + (straight ? "read the same from both edges" : "");
        return Optional.of(FindingCode.ONE_SET_ONLY.note(
                "The bands " + reason + ", so there is one set, and sets makes no difference.", "/sets"));
    }

    /** Warns of a set of which more is left over than of the other one, enough for a panel. */
    private static Optional<Finding> setLeftOver(Design design, Panel panel, LaminationYield lamination) {
        for (BandSet set : BandSet.values()) {
            if (lamination.sets() == 2 && unused(lamination, set) >= perPanel(panel)) {
                return Optional.of(leftOver(design, lamination, set));
            }
        }
        return Optional.empty();
    }

    /**
     * How many more segments of a set are left over than of the other one. Where a blank gives an odd number, one set
     * has one more of each blank, whatever is made of them.
     */
    private static int unused(LaminationYield lamination, BandSet set) {
        int unused = 0;
        for (SegmentYield segment : lamination.segments()) {
            int more = segment.uprightLeft() - segment.invertedLeft();
            int odd = segment.blanks() == null ? 0 : segment.perBlank() % 2 * segment.blanks();
            unused += Math.max(0, (set == BandSet.UPRIGHT ? more : -more) - odd);
        }
        return unused;
    }

    private static int perPanel(Panel panel) {
        return panel.pieces().stream().mapToInt(Piece::perSphere).sum()
                / panel.kind().count();
    }

    private static Finding leftOver(Design design, LaminationYield lamination, BandSet set) {
        int left = lamination.segments().stream()
                .mapToInt(segment -> set == BandSet.UPRIGHT ? segment.uprightLeft() : segment.invertedLeft())
                .sum();
        boolean twins = design.request().sets() == Sets.TWINS;
        return FindingCode.SET_LEFT_OVER.warn(
                "The bands of the " + Words.half(lamination.places()) + lamination.face()
                        + " lamination do not read the same from both edges, so every blank gives upright and inverted"
                        + " segments. Here " + left + " " + word(set) + " ones are not used up. "
                        + (twins
                                ? "An even number of copies uses both sets, as twins. Sets MIXED uses both in each"
                                        + " sphere."
                                : "Sets MIXED uses both in each sphere. TWINS uses both with an even number of"
                                        + " copies."),
                twins ? "/copies" : "/sets");
    }

    /** Notes the first segment of a lamination of which a set is just enough. */
    private static Optional<Finding> nothingToSpare(Design design, Panel panel, LaminationYield lamination) {
        if (design.spareSegments() > 0) {
            return Optional.empty();
        }
        for (SegmentYield segment : lamination.segments()) {
            boolean upright = segment.uprightNeeded() > 0 && segment.uprightLeft() == 0;
            boolean inverted = segment.invertedNeeded() > 0 && segment.invertedLeft() == 0;
            if (segment.blanks() != null && (upright || inverted)) {
                String set = lamination.sets() == 2 ? word(upright ? BandSet.UPRIGHT : BandSet.INVERTED) + " " : "";
                return Optional.of(FindingCode.NOTHING_TO_SPARE.note(
                        "Nothing is to spare: one spoilt " + set + "segment " + segment.segment() + " of the "
                                + Words.half(panel.places()) + panel.face() + " panels would be missing.",
                        "/spares"));
            }
        }
        return Optional.empty();
    }

    private static String word(BandSet set) {
        return set.name().toLowerCase(Locale.ROOT);
    }
}
