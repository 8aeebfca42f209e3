package org.orbwright.assembly;

/** Which panels are laid flat together. */
public enum NetForm {
    /** Those of each cap. */
    CAPS,
    /** Those of the whole solid. */
    WHOLE
}
