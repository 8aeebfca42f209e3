package org.orbwright.stock;

/** What the best plan has least of; between plans that are equal in it, the other one decides. */
public enum StockAim {
    /** The cost of the boards that are cut. */
    COST,
    /** The wood of the boards that are cut. */
    WASTE
}
