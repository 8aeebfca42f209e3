/**
 * The woods: what the service knows of each species, and from where. Start with {@link org.orbwright.wood.WoodTable}.
 */
package org.orbwright.wood;
