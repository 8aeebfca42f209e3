package org.orbwright.api.contract;

import jakarta.ws.rs.core.HttpHeaders;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.orbwright.api.FileNames;
import org.orbwright.api.query.Format;
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
                        type.equals(Format.JSON.type())
                                ? OASFactory.createSchema().ref("#/components/schemas/" + Answer.class.getSimpleName())
                                : OASFactory.createSchema()
                                        .addType(SchemaType.STRING)
                                        .format("binary"));
            }
        });
    }

    /** Declares the header of an answer that is a file in one of its forms. */
    static void nameFiles(APIResponse answer) {
        if (answer.getContent().getMediaTypes().keySet().stream().anyMatch(FileNames::isFile)) {
            answer.addHeader(
                    HttpHeaders.CONTENT_DISPOSITION,
                    OASFactory.createHeader()
                            .description("The name of the file (RFC 6266), in all forms but JSON.")
                            .schema(OASFactory.createSchema().addType(SchemaType.STRING)));
        }
    }
}
