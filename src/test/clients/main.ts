import {
  AssemblyApi, Configuration, DesignApi, DesignsApi, ResponseError, SetUpApi, ToleranceApi, TurningApi,
} from './index';

declare const process: { argv: string[] };

// One document, posted to five addresses.
async function main(): Promise<void> {
  const service = new Configuration({ basePath: process.argv[2] });
  const document = await new DesignsApi(service).findDesign({ design: 'icosahedron-mixed' });
  const sheet = await new DesignApi(service).calculateSheet({ document });
  const jig = await new SetUpApi(service).planJig({ document });
  const tolerance = await new ToleranceApi(service).calculateTolerance({ document });
  const assembly = await new AssemblyApi(service).planAssembly({ document });
  const turning = await new TurningApi(service).planTurning({ document });
  const refused = await new DesignApi(service)
    .calculateSheet({ document: { ...document, solid: 'icosahedrn' } })
    .then(() => 200, (error: ResponseError) => error.response.status);
  console.log(
    `blade tilt ${sheet.angles!.faces[0].bladeTilt}, stop distance ${jig.jig!.faces[0].segments[0].stopDistance},` +
      ` gap ${tolerance.tolerance!.panels[0].gap}, seams ${assembly.assembly!.totals.seams},` +
      ` lowest speed ${turning.turning!.speeds.lowest}, unknown solid ${refused}`,
  );
}

main();
