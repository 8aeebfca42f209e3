package org.orbwright.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.orbwright.drawing.Drawing;
import org.orbwright.paper.ShopSheet.Advice;
import org.orbwright.paper.ShopSheet.Check;
import org.orbwright.paper.ShopSheet.Heading;
import org.orbwright.paper.ShopSheet.Picture;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.paper.ShopSheet.Step;
import org.orbwright.paper.ShopSheet.Table;
import org.orbwright.paper.ShopSheet.Text;
import org.orbwright.paper.ShopSheet.Value;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Caution;

/** A section in the making; lengths in millimetres and angles in radians are written in the design's unit here. */
final class SetUp {
    private static final int ANGLE_DECIMALS = 2;

    private final String title;
    private final LengthUnit unit;
    private final List<Caution> cautions;
    private final List<Step> steps = new ArrayList<>();

    /** A section without steps in the design's unit. Of all cautions it takes those of its steps. */
    SetUp(String title, LengthUnit unit, List<Caution> cautions) {
        this.title = title;
        this.unit = unit;
        this.cautions = cautions;
    }

    SetUp heading(String text) {
        return add(new Heading(text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1)));
    }

    SetUp text(String text) {
        return add(new Text(text));
    }

    SetUp check(String text) {
        return add(new Check(text));
    }

    /** A picture at true size, which is reduced to fit. */
    SetUp picture(Drawing drawing) {
        return add(new Picture(drawing, true));
    }

    /** A picture that is not to scale. */
    SetUp sketch(Drawing drawing) {
        return add(new Picture(drawing, false));
    }

    /** The cautions of some steps of the work; what several of them say alike stands once in a section. */
    SetUp cautions(Caution.Step... of) {
        for (Caution.Step step : of) {
            cautions.stream()
                    .filter(caution -> caution.step() == step && !says(caution.text()))
                    .forEach(caution -> add(new Advice(caution)));
        }
        return this;
    }

    private boolean says(String text) {
        return steps.stream()
                .anyMatch(step ->
                        step instanceof Advice advice && advice.caution().text().equals(text));
    }

    /** A length to be known. */
    SetUp length(String label, double millimetres) {
        return length(label, millimetres, false);
    }

    /** The thinnest wall; where there is none, how far the sphere breaks through. */
    SetUp wall(double millimetres) {
        return millimetres > 0
                ? length("Thinnest wall", millimetres)
                : length("No wall: the hollow reaches beyond the sphere by", -millimetres);
    }

    /** A length to be measured on the work, with a blank for it. */
    SetUp measure(String label, double millimetres) {
        return length(label, millimetres, true);
    }

    private SetUp length(String label, double millimetres, boolean measured) {
        return add(new Value(label, unit.sayNumber(millimetres), unit.symbol(), unit.fraction(millimetres), measured));
    }

    /** An angle to be known. */
    SetUp angle(String label, double radians) {
        return add(new Value(label, degrees(radians), "°", "", false));
    }

    /** An angle to be measured, with a blank for it. */
    SetUp measureAngle(String label, double radians) {
        return add(new Value(label, degrees(radians), "°", "", true));
    }

    SetUp count(String label, long count) {
        return add(new Value(label, Long.toString(count), "", "", false));
    }

    /** Another number, already in its unit. */
    SetUp number(String label, double number, int decimals, String itsUnit) {
        return add(new Value(label, Rounding.plain(number, decimals), itsUnit, "", false));
    }

    SetUp table(List<String> headings, List<List<String>> rows) {
        return rows.isEmpty() ? this : add(new Table(headings, rows));
    }

    /** A row of a table. A double is a length in millimetres, in inches with its fraction; null is a dash. */
    List<String> row(Object... cells) {
        return Arrays.stream(cells).map(this::cell).toList();
    }

    private String cell(Object cell) {
        return cell == null ? "-" : cell instanceof Double length ? unit.sayWithFraction(length) : cell.toString();
    }

    /** The symbol of the unit of lengths. */
    String unit() {
        return unit.symbol();
    }

    /** The headings of a table; one that ends in a comma is of lengths and gets their unit. */
    List<String> headings(String... names) {
        return Arrays.stream(names)
                .map(name -> name.endsWith(",") ? name + " " + unit.symbol() : name)
                .toList();
    }

    /** A length with its unit, for a sentence. */
    String say(double millimetres) {
        return unit.say(millimetres);
    }

    /** An angle in degrees, without its sign. */
    static String degrees(double radians) {
        return Rounding.plain(Math.toDegrees(radians), ANGLE_DECIMALS);
    }

    Section build() {
        return new Section(title, steps);
    }

    private SetUp add(Step step) {
        steps.add(step);
        return this;
    }
}
