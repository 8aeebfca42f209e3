package org.orbwright.api.wire;

import jakarta.inject.Singleton;
import jakarta.validation.MessageInterpolator;
import java.util.Locale;

/**
 * Leaves the messages of broken rules as they are: {@link BeanRules} words them. To interpolate them would take time
 * and reads the header Accept-Language, where a lone hyphen makes the standard one fail.
 */
@Singleton
class PlainMessages implements MessageInterpolator {
    @Override
    public String interpolate(String template, Context context) {
        return template;
    }

    @Override
    public String interpolate(String template, Context context, Locale locale) {
        return template;
    }
}
