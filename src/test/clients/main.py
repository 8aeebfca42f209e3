"""Calls the service through the generated client: one document, posted to five addresses."""

import sys

from openapi_client import (
    ApiClient,
    ApiException,
    AssemblyApi,
    Configuration,
    DesignApi,
    DesignsApi,
    SetUpApi,
    ToleranceApi,
    TurningApi,
)

with ApiClient(Configuration(host=sys.argv[1])) as service:
    document = DesignsApi(service).find_design("icosahedron-mixed")
    sheet = DesignApi(service).calculate_sheet(document)
    jig = SetUpApi(service).plan_jig(document)
    tolerance = ToleranceApi(service).calculate_tolerance(document)
    assembly = AssemblyApi(service).plan_assembly(document)
    turning = TurningApi(service).plan_turning(document)
    document.solid = "icosahedrn"
    refused = 200
    try:
        DesignApi(service).calculate_sheet(document)
    except ApiException as e:
        refused = e.status
    print(
        f"blade tilt {sheet.angles.faces[0].blade_tilt},"
        f" stop distance {jig.jig.faces[0].segments[0].stop_distance},"
        f" gap {tolerance.tolerance.panels[0].gap},"
        f" seams {assembly.assembly.totals.seams},"
        f" lowest speed {turning.turning.speeds.lowest},"
        f" unknown solid {refused}"
    )
