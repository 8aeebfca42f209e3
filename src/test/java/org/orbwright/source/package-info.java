/**
 * What the checks rest on: every check of the main capabilities states it, and {@link org.orbwright.source.SourcesTest}
 * counts them.
 */
package org.orbwright.source;
