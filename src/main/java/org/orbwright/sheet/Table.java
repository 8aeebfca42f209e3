package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;

/** An answer that can also be had as a table, for spreadsheets. */
public interface Table {
    /** The design, whose unit the table's lengths are stated in. */
    DesignRequest design();

    /** The records that are its rows: their components are its columns, each a number, a text or a constant. */
    Class<? extends Record> rowType();

    /** Its rows. */
    List<? extends Record> rows();
}
