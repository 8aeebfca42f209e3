package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.stock.CutBoard;
import org.orbwright.stock.CutBoard.Section;

/** The sections of a board that are ripped alike, each kind with a letter. */
final class SectionKinds {
    private static final int LETTERS = 26;

    private final List<Section> kinds = new ArrayList<>();
    private final List<Integer> kindOf = new ArrayList<>();
    private final CutBoard board;

    SectionKinds(CutBoard board) {
        this.board = board;
        for (Section section : board.sections()) {
            int kind = 0;
            while (kind < kinds.size() && !kinds.get(kind).lanes().equals(section.lanes())) {
                kind++;
            }
            if (kind == kinds.size()) {
                kinds.add(section);
            }
            kindOf.add(kind);
        }
    }

    /** The first section of each kind. */
    List<Section> firsts() {
        return kinds;
    }

    /** The sections of a kind. */
    List<Section> sections(int kind) {
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < kindOf.size(); i++) {
            if (kindOf.get(i) == kind) {
                sections.add(board.sections().get(i));
            }
        }
        return sections;
    }

    /** The letter of the kind of a section. */
    String letterOf(int section) {
        return letter(kindOf.get(section));
    }

    /** The letter of a kind: A to Z, then AA and so on. */
    static String letter(int kind) {
        String last = String.valueOf((char) ('A' + kind % LETTERS));
        return kind < LETTERS ? last : letter(kind / LETTERS - 1) + last;
    }
}
