package org.orbwright.api;

import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.orbwright.sheet.Answer;

/** Describes the answers of bodies in the contract: files, and their numbers as JSON. */
final class FileContents {
    private FileContents() {}

    /** Gives the contents of a body's answer their schemas, and leaves others as they are. */
    static void describe(Content content) {
        if (content == null || !content.hasMediaType(Form.STL_TYPE)) {
            return;
        }
        content.getMediaTypes()
                .forEach((type, media) -> media.setSchema(
                        type.equals(Form.JSON.type())
                                ? OASFactory.createSchema().ref("#/components/schemas/" + Answer.class.getSimpleName())
                                : OASFactory.createSchema()
                                        .addType(SchemaType.STRING)
                                        .format(type.equals(Form.OBJ_TYPE) ? null : "binary")));
    }
}
