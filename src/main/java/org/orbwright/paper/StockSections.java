package org.orbwright.paper;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.orbwright.drawing.BoardDrawing;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.stock.CutBoard;
import org.orbwright.stock.CutStep;
import org.orbwright.stock.ShoppingRow.Kind;
import org.orbwright.stock.StockPlan.StripNeed;

/** What is bought, and how the boards are cut to strips. */
final class StockSections {
    private StockSections() {}

    static Section cuts(Answers answers) {
        SetUp section = answers.section("Cutting the boards");
        section.cautions(Step.SURFACING, Step.RIPPING, Step.RESAWING);
        List<List<String>> buys = answers.build().purchases().rows().stream()
                .filter(row -> row.row() == Kind.PURCHASE)
                .map(row ->
                        section.row(row.count(), row.name(), row.species(), row.length(), row.width(), row.thickness()))
                .toList();
        if (!buys.isEmpty()) {
            section.heading("To buy")
                    .table(section.headings("Boards", "Offer", "Wood", "Length,", "Width,", "Thickness,"), buys);
        }
        section.text(
                "Settings are measured from the cut before. Sizes are those of the part that comes of the step. Write"
                        + " the name of the part on it. What is left over and has no step of its own is waste.");
        for (CutBoard board : answers.stock().boards()) {
            List<List<String>> steps = answers.build().cuts().stream()
                    .filter(step -> step.board() == board.number())
                    .map(step -> row(step, section))
                    .toList();
            section.heading("Board " + board.number() + ": " + (board.name() == null ? "" : board.name() + ", ")
                            + board.species())
                    .table(
                            section.headings("Step", "Cut", "Setting,", "Length,", "Width,", "Thickness,", "Part"),
                            steps)
                    .sketch(BoardDrawing.draw(answers.design(), answers.stock(), board.number()));
        }
        return section.check("All boards cut. Each strip is marked with its name, and what is kept is put by.")
                .build();
    }

    private static List<String> row(CutStep step, SetUp section) {
        return section.row(
                step.board() + "." + step.step(),
                words(step.operation()),
                step.setting(),
                step.length(),
                step.width(),
                step.thickness(),
                part(step));
    }

    /** What to write on a part that is not cut further, else what it is. */
    private static String part(CutStep step) {
        return step.label() == null ? words(step.part()) : step.label();
    }

    private static String words(Enum<?> operation) {
        return operation.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The strip of a band as the stock plan rips it, with what is planed off it later. */
    static Optional<StripNeed> ripped(Answers answers, int lamination, int band) {
        if (answers.stock() == null) {
            return Optional.empty();
        }
        return answers.stock().strips().stream()
                .filter(strip -> strip.lamination() == lamination + 1 && strip.band() == band)
                .findFirst();
    }
}
