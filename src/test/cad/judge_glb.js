// Judges binary glTF files with the Khronos Group's validator. Usage: node judge_glb.js <file> ...
const fs = require('fs');
const validator = require('gltf-validator');

(async () => {
  for (const file of process.argv.slice(2)) {
    const { issues, info } = await validator.validateBytes(new Uint8Array(fs.readFileSync(file)));
    if (issues.numErrors + issues.numWarnings > 0) {
      console.error(`cad: ${file} has faults: ${JSON.stringify(issues.messages.slice(0, 3))}`);
      process.exit(1);
    }
    console.log(`cad: ${file} is valid: ${info.totalTriangleCount} triangles, ${info.materialCount} materials`);
  }
})();
