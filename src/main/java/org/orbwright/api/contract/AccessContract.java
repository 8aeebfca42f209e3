package org.orbwright.api.contract;

import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.security.SecurityScheme;
import org.orbwright.api.guard.AccessGate;

/** How the contract says that keys and tokens may be asked for: each is a choice, and so is neither. */
final class AccessContract {
    private static final String KEY = "key";
    private static final String TOKEN = "token";

    private AccessContract() {}

    static void addTo(OpenAPI contract) {
        contract.getComponents()
                .addSecurityScheme(
                        KEY,
                        OASFactory.createSecurityScheme()
                                .type(SecurityScheme.Type.APIKEY)
                                .in(SecurityScheme.In.HEADER)
                                .name(AccessGate.KEY)
                                .description("A key of the service (orbwright.access.keys), where it asks for one."))
                .addSecurityScheme(
                        TOKEN,
                        OASFactory.createSecurityScheme()
                                .type(SecurityScheme.Type.HTTP)
                                .scheme("bearer")
                                .description("A token of the service's provider (orbwright.access.tokens), or a key."));
        contract.setSecurity(List.of(
                OASFactory.createSecurityRequirement(),
                OASFactory.createSecurityRequirement().addScheme(KEY),
                OASFactory.createSecurityRequirement().addScheme(TOKEN)));
    }
}
