package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.orbwright.drawing.BoardDrawing;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.stock.CutBoard;
import org.orbwright.stock.CutStep;
import org.orbwright.stock.ShoppingRow;
import org.orbwright.stock.ShoppingRow.Kind;
import org.orbwright.stock.StockPlan.StripNeed;

/** What is bought, and how the boards are cut to strips. */
final class StockSections {
    private StockSections() {}

    static Section cuts(Answers answers) {
        SetUp section = answers.section("Cutting the boards");
        section.cautions(Step.SURFACING, Step.RIPPING, Step.RESAWING);
        List<List<String>> buys = new ArrayList<>();
        for (ShoppingRow row : answers.build().purchases().rows()) {
            if (row.row() == Kind.PURCHASE) {
                buys.add(List.of(
                        Integer.toString(row.count()),
                        row.name() == null ? "-" : row.name(),
                        row.species(),
                        section.cell(row.length()),
                        section.cell(row.width()),
                        section.cell(row.thickness())));
            }
        }
        if (!buys.isEmpty()) {
            section.heading("To buy")
                    .table(
                            List.of(
                                    "Boards",
                                    "Offer",
                                    "Wood",
                                    section.column("Length"),
                                    section.column("Width"),
                                    section.column("Thickness")),
                            buys);
        }
        section.text("Settings are measured from the cut before. Sizes are those of the part that comes of the step."
                + " Write the name of the part on it. What is left over and has no step of its own is waste.");
        for (CutBoard board : answers.stock().boards()) {
            List<CutStep> steps = answers.build().cuts().stream()
                    .filter(step -> step.board() == board.number())
                    .toList();
            section.heading("Board " + board.number() + ": " + (board.name() == null ? "" : board.name() + ", ")
                            + board.species())
                    .table(headings(section), rows(steps, section))
                    .sketch(BoardDrawing.draw(answers.design(), answers.stock(), board.number()));
        }
        return section.check("All boards cut. Each strip is marked with its name, and what is kept is put by.")
                .build();
    }

    private static List<String> headings(SetUp section) {
        return List.of(
                "Step",
                "Cut",
                section.column("Setting"),
                section.column("Length"),
                section.column("Width"),
                section.column("Thickness"),
                "Part");
    }

    private static List<List<String>> rows(List<CutStep> steps, SetUp section) {
        List<List<String>> rows = new ArrayList<>();
        for (CutStep step : steps) {
            rows.add(List.of(
                    step.board() + "." + step.step(),
                    words(step.operation()),
                    step.setting() == null ? "-" : section.cell(step.setting()),
                    section.cell(step.length()),
                    section.cell(step.width()),
                    section.cell(step.thickness()),
                    part(step)));
        }
        return rows;
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
