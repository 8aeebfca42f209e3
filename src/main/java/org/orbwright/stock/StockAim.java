package org.orbwright.stock;

/** What the best plan has least of; between plans that are equal in it, the others decide, in this order. */
public enum StockAim {
    /** The cost of the boards that are cut. */
    COST,
    /** The wood of the boards that are cut. */
    WASTE,
    /** The seams in strips that are made up of pieces. */
    SEAMS
}
