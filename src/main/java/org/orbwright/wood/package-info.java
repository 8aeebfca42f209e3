/**
 * The woods: what is known of each species and where it was read, what a document states of woods of its own, and what
 * the names in a design mean. Start with {@link org.orbwright.wood.Woods}.
 */
package org.orbwright.wood;
