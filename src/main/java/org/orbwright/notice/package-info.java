/**
 * What a file tells whoever opens it beside what it holds, so that a STOP goes wherever the file goes. It knows nothing
 * of findings, so that drawings, bodies and programs can take it. Start with {@link org.orbwright.notice.Notice}. Texts
 * that put an article before a name ask {@link org.orbwright.notice.Article}.
 */
package org.orbwright.notice;
