// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// diary.fhir.json as other people's checkers see it: the npm packages `fhir` (the whole Bundle) and
// `@solarahealth/fhir-r4` (the Bundle, and each resource alone).
//   node check.mjs EVENFALL-DESK SOURCE-FOLDER FOLDER-WITH-node_modules
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";

const [desk, source, modules] = process.argv.slice(2);
if (!existsSync(join(modules, "node_modules", "fhir", "package.json"))) {
    console.error(`The FHIR checkers are not in ${modules}/node_modules. Right would be: ` +
        `tests/outside/fhir/install ${modules} (npm ci, which needs the network once).`);
    process.exit(1);
}
const require = createRequire(join(modules, "package.json"));
const { Fhir } = require("fhir");
const solara = require("@solarahealth/fhir-r4");
const whole = new Fhir();

let faults = 0;
function fault(text) {
    ++faults;
    console.error(text);
}

/** What `fhir` says of the Bundle. Codes of open value sets are warnings there: ours are local. */
function by_fhir(bundle) {
    const found = whole.validate(bundle, { errorOnUnexpected: true });
    const messages = found.messages.filter((each) => each.severity === "error" || each.severity === "fatal");
    return messages.map((each) => `${each.location}: ${each.message}`).concat(found.valid || messages.length ? [] : ["not valid"]);
}

/** What `@solarahealth/fhir-r4` says of the Bundle and of each resource. */
function by_solara(bundle) {
    const found = [];
    const check = (resource, at) => {
        const make = solara[`create${resource?.resourceType}Schema`];
        if (!make) {
            found.push(`${at}: no such resource: ${resource?.resourceType}`);
            return;
        }
        const result = make().safeParse(resource);
        for (const issue of result.success ? [] : result.error.issues)
            found.push(`${at}/${issue.path.join("/")}: ${issue.message}`);
    };
    check(bundle, "");
    bundle.entry.forEach((entry, index) => check(entry.resource, `/entry/${index}/resource`));
    return found;
}

const folder = mkdtempSync(join(tmpdir(), "evenfall-fhir-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));

/** The Bundle of one night report, with a study code where it has none. Null: nothing has a time. */
function bundle_of(file, index) {
    const night = JSON.parse(readFileSync(file, "utf8"));
    night.visit ??= { code: "SM-0417", night: 1 };
    const timed = ["recording", "into_bed", "lights_out", "final_waking", "lights_on", "out_of_bed", "off"];
    if (!timed.some((key) => key in night))
        return null;
    const report = join(folder, `${index}.json`);
    writeFileSync(report, JSON.stringify(night));
    const record = execFileSync(desk, ["record", report, "--out", join(folder, `out-${index}`)], { encoding: "utf8" }).trim();
    return JSON.parse(readFileSync(join(record, "diary.fhir.json"), "utf8"));
}

const samples = join(source, "tests", "data", "night", "valid");
const files = readdirSync(samples).sort().map((name) => join(samples, name));
files.push(join(source, "assets", "schemas", "examples", "night.json"));
let checked = 0;
let resources = 0;
let example;

function check_bundle(name, bundle) {
    ++checked;
    resources += bundle.entry.length;
    for (const text of by_fhir(bundle).concat(by_solara(bundle)))
        fault(`${name}: ${text}`);
}

files.forEach((file, index) => {
    const bundle = bundle_of(file, index);
    if (!bundle)
        return;
    check_bundle(file, bundle);
    example = bundle; // the last is the example, which has everything
});

/** The Bundle that a diary makes. */
function bundle_from(name, diary) {
    const file = join(folder, `${name}.json`);
    writeFileSync(file, JSON.stringify(diary));
    const record = execFileSync(desk, ["record", "--from", file, "--out", join(folder, name)], { encoding: "utf8", stdio: "pipe" }).trim();
    return JSON.parse(readFileSync(join(record, "diary.fhir.json"), "utf8"));
}

// What only a diary can hold, night reports cannot. Invented.
const out = join(folder, `out-${files.length - 1}`);
const diary = JSON.parse(readFileSync(join(out, readdirSync(out)[0], "diary.json"), "utf8"));
diary.kit = { id: "heron", label: "Bag 12", origin: "reported" };
diary.events = [{ at: diary.night.into_bed, minutes: 7.5, kind: "bathroom", comment: "cold", origin: "reported" }];
diary.answers = [
    { question: "caffeine", answer: { cups: 2 }, origin: "reported" },
    { question: "compare", answer: "usual", origin: "reported" },
    { question: "nap", answer: false, origin: "reported" },
    { question: "cups", answer: 2, origin: "reported" },
    { question: "hours", answer: 2.5, origin: "derived" },
];
diary.notes = [{ text: "two\nlines, \u0636\u0648\u0636\u0627\u0621", origin: "reported" }];
diary.signal_checks = [{ at: diary.night.into_bed, kind: "light", subject: "recorder", text: "steady", origin: "reported" }];
check_bundle("a full diary", bundle_from("full", diary));

// A night that contradicts itself. The program itself says which problems its diary has to carry.
[diary.night.into_bed, diary.night.out_of_bed] = [diary.night.out_of_bed, diary.night.into_bed];
delete diary.estimate;
diary.problems = [];
try {
    bundle_from("probe", diary);
    fault("a contradictory diary without its problems was taken");
} catch (error) {
    for (const line of error.stderr.split("\n")) {
        const right = line.match(/: \/problems\/.*right would be (\{.*\})$/);
        if (right)
            diary.problems.push(JSON.parse(right[1]));
    }
}
const contradictory = bundle_from("contradictory", diary);
check_bundle("a contradictory diary", contradictory);
if (contradictory.entry.some((each) => each.resource.resourceType === "Observation"))
    fault("a contradictory diary: has Observations");

// The checkers do see: each spoilt copy must be refused by both.
const spoil = [
    ["unknown field", (b) => { first(b, "Observation").mood = "fine"; }],
    ["unknown field in an item", (b) => { first(b, "QuestionnaireResponse").item[0].mood = "fine"; }],
    ["status outside its value set", (b) => { first(b, "Observation").status = "finished"; }],
    ["response status outside its value set", (b) => { first(b, "QuestionnaireResponse").status = "done"; }],
    ["type of question outside its value set", (b) => { first(b, "Questionnaire").item[0].type = "number"; }],
    ["bundle type outside its value set", (b) => { b.type = "heap"; }],
    ["missing code", (b) => { delete first(b, "Observation").code; }],
    ["missing status", (b) => { delete first(b, "QuestionnaireResponse").status; }],
    ["missing linkId", (b) => { delete first(b, "QuestionnaireResponse").item[0].linkId; }],
    ["missing recorded", (b) => { delete first(b, "Provenance").recorded; }],
    ["missing content", (b) => { delete first(b, "CodeSystem").content; }],
    ["wrong type of resource", (b) => { first(b, "Patient").resourceType = "Person2"; }],
    ["text for a number", (b) => { first(b, "Observation").valueQuantity.value = "590"; }],
    ["one object for a list", (b) => { first(b, "Patient").identifier = first(b, "Patient").identifier[0]; }],
    ["malformed dateTime", (b) => { first(b, "QuestionnaireResponse").authored = "yesterday"; }],
];
function first(bundle, type) {
    return bundle.entry.find((each) => each.resource.resourceType === type).resource;
}
for (const [name, change] of spoil) {
    const copy = structuredClone(example);
    change(copy);
    const seen = [["fhir", by_fhir(copy)], ["@solarahealth/fhir-r4", by_solara(copy)]];
    for (const [checker, found] of seen)
        if (found.length === 0)
            fault(`${checker} does not see: ${name}`);
}

if (checked < 8) // five samples with a time, the example, and two diaries
    fault(`only ${checked} bundles were checked`);
console.log(`${checked} bundles, ${resources} resources, ${spoil.length} spoilt copies; faults: ${faults}`);
process.exit(faults === 0 ? 0 : 1);
