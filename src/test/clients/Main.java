import org.openapitools.client.ApiClient;
import org.openapitools.client.ApiException;
import org.openapitools.client.api.DesignApi;
import org.openapitools.client.api.DesignsApi;
import org.openapitools.client.model.DesignRequest;
import org.openapitools.client.model.Sheet;

/** Calls the service through the generated client. */
public class Main {
    public static void main(String[] arguments) throws ApiException {
        ApiClient service = new ApiClient();
        service.updateBaseUri(arguments[0]);
        DesignRequest design = new DesignsApi(service).findDesign("dodecahedron-two-spheres");
        Sheet sheet = new DesignApi(service).calculateSheet(design, null);
        int refused = 200;
        try {
            new DesignApi(service).calculateSheet(design.solid("dodecahedrn"), null);
        } catch (ApiException e) {
            refused = e.getCode();
        }
        System.out.printf(
                "blade tilt %s, unknown solid %d%n", sheet.getAngles().getFaces().get(0).getBladeTilt(), refused);
    }
}
