package org.orbwright.workbook;

import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A formula of either file format. It is written once, with references as {@code {Design!B4}} or {@code {B4}}, the
 * semicolon between arguments, and functions that are younger than a format's first edition as {@code @NAME(}.
 */
final class Formula {
    private static final Pattern REFERENCE =
            Pattern.compile("\\{(?:([A-Za-z]+)!)?([A-Z]+)([0-9]+)(?::([A-Z]+)([0-9]+))?}");
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|;");
    private static final Pattern YOUNGER = Pattern.compile("@([A-Z]+)");
    /** Functions that OpenDocument's own list of formulas (OpenFormula) lacks. */
    private static final String FETCHING = "WEBSERVICE|ENCODEURL";

    private Formula() {}

    /** As Office Open XML has it. */
    static String officeOpen(String formula) {
        String arguments =
                QUOTED.matcher(formula).replaceAll(found -> found.group().equals(";") ? "," : quote(found.group()));
        return references(YOUNGER.matcher(arguments).replaceAll("_xlfn.$1"), found -> {
            String sheet = found.group(1) == null ? "" : found.group(1) + "!";
            return sheet + cell(found, 2) + (found.group(4) == null ? "" : ":" + cell(found, 4));
        });
    }

    /** As OpenDocument has it. */
    static String openDocument(String formula) {
        String named = YOUNGER.matcher(formula)
                .replaceAll(
                        found -> found.group(1).matches(FETCHING) ? "COM.MICROSOFT." + found.group(1) : found.group(1));
        return "of:="
                + references(named, found -> {
                    String sheet = found.group(1) == null ? "" : "\\$" + found.group(1);
                    return "[" + sheet + "." + cell(found, 2) + (found.group(4) == null ? "" : ":." + cell(found, 4))
                            + "]";
                });
    }

    private static String references(String formula, Function<MatchResult, String> written) {
        return REFERENCE.matcher(formula).replaceAll(written);
    }

    private static String cell(MatchResult found, int group) {
        return "\\$" + found.group(group) + "\\$" + found.group(group + 1);
    }

    private static String quote(String text) {
        return Matcher.quoteReplacement(text);
    }
}
