import { Configuration, DesignApi, DesignsApi, ResponseError } from './index';

declare const process: { argv: string[] };

async function main(): Promise<void> {
  const service = new Configuration({ basePath: process.argv[2] });
  const design = await new DesignsApi(service).findDesign({ design: 'dodecahedron-two-spheres' });
  const sheet = await new DesignApi(service).calculateSheet({ designRequest: design });
  const refused = await new DesignApi(service)
    .calculateSheet({ designRequest: { ...design, solid: 'dodecahedrn' } })
    .then(() => 200, (error: ResponseError) => error.response.status);
  console.log(`blade tilt ${sheet.angles.faces[0].bladeTilt}, unknown solid ${refused}`);
}

main();
