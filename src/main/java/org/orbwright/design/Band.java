package org.orbwright.design;

/**
 * One strip of a lamination.
 *
 * @param species the wood
 * @param width width in millimetres
 */
public record Band(String species, double width) {}
