package org.orbwright.source;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a check rests on. On a class it stands for all checks in it; what stands on a check itself goes first. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.METHOD})
public @interface Source {
    /** What kind of thing it is. */
    Kind value();

    /** How it is found again: author, title, edition or year, table or page; or the library; or the formula. */
    String text() default "";
}
