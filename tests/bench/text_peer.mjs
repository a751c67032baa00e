// SPDX-License-Identifier: GPL-3.0-or-later
// DuckDB reading a delimited text: node text_peer.mjs FOLDER FILE THREADS table|sum
// FOLDER holds node_modules with @duckdb/node-api. "table" keeps the numbers in memory, "sum" only adds them up.
import { createRequire } from "node:module";
import path from "node:path";

const [folder, file, threads, task] = process.argv.slice(2);
const { DuckDBInstance } = createRequire(path.resolve(folder, "package.json"))("@duckdb/node-api");
const instance = await DuckDBInstance.create(":memory:", { threads });
const connection = await instance.connect();
const source = `read_csv('${file.replaceAll("'", "''")}')`;
const before = process.cpuUsage();
const begin = process.hrtime.bigint();
if (task === "table") await connection.run(`CREATE TABLE recording AS SELECT * FROM ${source}`);
const table = task === "table" ? "recording" : source;
const answer = await connection.runAndReadAll(
  `SELECT count(*)::INTEGER, sum("TP-01 [um/m]") + sum("LC-1 [kN]"), version() FROM ${table}`);
const wall_s = Number(process.hrtime.bigint() - begin) * 1e-9;
const cpu = process.cpuUsage(before);
const [rows, sum, version] = answer.getRows()[0];
console.log(JSON.stringify({ wall_s, cpu_s: (cpu.user + cpu.system) * 1e-6, rows, sum, version,
                             peak_bytes: process.resourceUsage().maxRSS * 1024 }));
