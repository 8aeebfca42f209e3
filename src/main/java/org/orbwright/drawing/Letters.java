package org.orbwright.drawing;

/** How letters are drawn. */
public enum Letters {
    /** In ink. */
    PLAIN,
    /** In ink with a light rim, to be read on every wood. */
    CASED,
    /** Bold and light, on ink. */
    REVERSED
}
