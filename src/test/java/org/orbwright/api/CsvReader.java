package org.orbwright.api;

import java.util.ArrayList;
import java.util.List;

/** Reads comma separated values by the letter of RFC 4180, and takes nothing else. */
final class CsvReader {
    private CsvReader() {}

    /** The rows of a file whose every line, the last one too, ends in CR LF. */
    static List<List<String>> read(String csv) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        int at = 0;
        while (at < csv.length()) {
            StringBuilder cell = new StringBuilder();
            if (csv.charAt(at) == '"') {
                at++;
                while (csv.charAt(at) != '"' || csv.charAt(at + 1) == '"') {
                    at += csv.charAt(at) == '"' ? 1 : 0;
                    cell.append(csv.charAt(at++));
                }
                at++;
            } else {
                while (csv.charAt(at) != ',' && csv.charAt(at) != '\r') {
                    if (csv.charAt(at) == '"' || csv.charAt(at) == '\n') {
                        throw new AssertionError("not quoted: " + csv.substring(0, at));
                    }
                    cell.append(csv.charAt(at++));
                }
            }
            row.add(cell.toString());
            if (csv.charAt(at) == ',') {
                at++;
            } else if (csv.startsWith("\r\n", at)) {
                at += 2;
                rows.add(row);
                row = new ArrayList<>();
            } else {
                throw new AssertionError("neither comma nor line end: " + csv.substring(0, at));
            }
        }
        return rows;
    }
}
