import org.openapitools.client.ApiClient;
import org.openapitools.client.ApiException;
import org.openapitools.client.api.AssemblyApi;
import org.openapitools.client.api.DesignApi;
import org.openapitools.client.api.DesignsApi;
import org.openapitools.client.api.SetUpApi;
import org.openapitools.client.api.ToleranceApi;
import org.openapitools.client.api.TurningApi;
import org.openapitools.client.model.Answer;
import org.openapitools.client.model.Document;

/** Calls the service through the generated client: one document, posted to five addresses. */
public class Main {
    public static void main(String[] arguments) throws ApiException {
        ApiClient service = new ApiClient();
        service.updateBaseUri(arguments[0]);
        Document document = new DesignsApi(service).findDesign("icosahedron-mixed");
        Answer sheet = new DesignApi(service).calculateSheet(document, null);
        Answer jig = new SetUpApi(service).planJig(document);
        Answer tolerance = new ToleranceApi(service).calculateTolerance(document);
        Answer assembly = new AssemblyApi(service).planAssembly(document);
        Answer turning = new TurningApi(service).planTurning(document);
        int refused = 200;
        try {
            new DesignApi(service).calculateSheet(document.solid("icosahedrn"), null);
        } catch (ApiException e) {
            refused = e.getCode();
        }
        System.out.printf(
                "blade tilt %s, stop distance %s, gap %s, seams %s, lowest speed %s, unknown solid %d%n",
                sheet.getAngles().getFaces().get(0).getBladeTilt(),
                jig.getJig().getFaces().get(0).getSegments().get(0).getStopDistance(),
                tolerance.getTolerance().getPanels().get(0).getGap(),
                assembly.getAssembly().getTotals().getSeams(),
                turning.getTurning().getSpeeds().getLowest(),
                refused);
    }
}
