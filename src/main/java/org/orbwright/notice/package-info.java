/**
 * What a file tells whoever opens it beside what it holds, so that a STOP goes wherever the file goes. It knows nothing
 * of findings, so that drawings, bodies and programs can take it. Start with {@link org.orbwright.notice.Notice}.
 */
package org.orbwright.notice;
