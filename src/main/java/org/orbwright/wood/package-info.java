/**
 * The woods: what is known of each species and where it was read. A document may state woods of its own. What the names
 * in a design mean is settled here. Start with {@link org.orbwright.wood.Woods}.
 *
 * <p><b>Names mean something in a design alone.</b> {@code Design.woods()} looks up the document's own woods first,
 * then the table. {@link org.orbwright.wood.Woods} says which wood a trade name is taken for. That is never done in
 * silence: {@code WoodFindings} says so. Boards are matched with bands by what their names may mean
 * ({@code Woods.among}).
 */
package org.orbwright.wood;
