// How long a general-purpose notation library takes to read the score that ScoreBenchmarks reads and looks at:
//   dotnet run -c Release --project tests/WarmupConsole.Benchmarks -- --score-file score.musicxml
//   npm install verovio@6.3.0        (in any folder: NODE_PATH does not reach modules, so run it from there)
//   node score_reader.mjs score.musicxml [ROUNDS]
// It reads the file into its own score without laying out a page (as far as its interface lets one ask for that), which is the nearest to what we do.
import { readFileSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [file, rounds = "20"] = process.argv.slice(2);
const from = createRequire(pathToFileURL(process.cwd() + "/"));
const createModule = (await import(pathToFileURL(from.resolve("verovio/wasm")).href)).default;
const { VerovioToolkit } = await import(pathToFileURL(from.resolve("verovio/esm")).href);
const text = readFileSync(file, "utf8");
const toolkit = new VerovioToolkit(await createModule());
toolkit.setOptions({ breaks: "none" });

const times = [];
for (let round = 0; round < 2 + Number(rounds); round++) {
    const start = performance.now();
    if (!toolkit.loadData(text)) {
        throw new Error(`${file} was not read.`);
    }

    times.push(performance.now() - start);
}

const kept = times.slice(2).sort((a, b) => a - b); // the first two warm it up
console.log(`| verovio ${toolkit.getVersion()}: score of ${(text.length / 1e6).toFixed(2)} MB read | ${kept[kept.length >> 1].toFixed(1)} ms | – | ${kept.at(-1).toFixed(1)} ms |`);
