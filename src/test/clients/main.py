"""Calls the service through the generated client."""

import sys

from openapi_client import ApiClient, ApiException, Configuration, DesignApi, DesignsApi

with ApiClient(Configuration(host=sys.argv[1])) as service:
    design = DesignsApi(service).find_design("dodecahedron-two-spheres")
    sheet = DesignApi(service).calculate_sheet(design)
    design.solid = "dodecahedrn"
    refused = 200
    try:
        DesignApi(service).calculate_sheet(design)
    except ApiException as e:
        refused = e.status
    print(f"blade tilt {sheet.angles.faces[0].blade_tilt}, unknown solid {refused}")
