package org.orbwright.drawing;

import java.util.List;
import org.orbwright.notice.Notice;

/**
 * A drawing in millimetres, the origin at the top left, y downwards. The description is for somebody who cannot see it.
 * Species stand in the order of the key, marks from the back to the front.
 */
public record Drawing(
        String title, String description, double width, double height, List<String> species, List<Mark> marks) {

    /** Copies the lists. */
    public Drawing {
        species = List.copyOf(species);
        marks = List.copyOf(marks);
    }

    /** The same drawing with STOPs above it, where they cover nothing, and STOPs and WARNs in its description. */
    public Drawing with(List<Notice> notices) {
        return NoticeBlock.above(this, notices);
    }
}
