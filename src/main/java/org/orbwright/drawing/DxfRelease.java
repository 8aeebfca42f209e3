package org.orbwright.drawing;

/** Releases of drawing interchange files. */
public enum DxfRelease {
    /** Release 2000: has a unit, light polylines and a handle for each thing. */
    R2000("AC1015"),
    /** Release 12, for older programs: has no place for a unit. */
    R12("AC1009");

    private final String version;

    DxfRelease(String version) {
        this.version = version;
    }

    /** Its name in the header variable {@code $ACADVER}. */
    String version() {
        return version;
    }
}
