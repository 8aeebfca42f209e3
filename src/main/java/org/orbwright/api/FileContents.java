package org.orbwright.api;

import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.orbwright.sheet.Answer;

/** Describes pictures and bodies in the contract: files, and their numbers as JSON. */
final class FileContents {
    private FileContents() {}

    /**
     * Gives the contents that the resources say nothing of their schemas. Forms that are text are files as well: a
     * generated client has one type for all forms of an answer.
     */
    static void describe(Content content) {
        content.getMediaTypes().forEach((type, media) -> {
            Schema known = media.getSchema();
            if (known == null || (known.getRef() == null && known.getType() == null)) {
                media.setSchema(
                        type.equals(Form.JSON.type())
                                ? OASFactory.createSchema().ref("#/components/schemas/" + Answer.class.getSimpleName())
                                : OASFactory.createSchema()
                                        .addType(SchemaType.STRING)
                                        .format("binary"));
            }
        });
    }
}
