// SPDX-License-Identifier: Apache-2.0
/**
 * Many runs of changed cases. In: a loaded case, named changes, an executor. Promised: runs go side
 * by side on passed-in threads, none is calculated twice that a {@link gelfront.answer.RunStore}
 * keeps, one bad run leaves its reason and the others alone, results don't depend on the number of
 * threads nor on what ran before.
 *
 * <pre>{@code
 * LoadedCase base = CaseFile.read(Path.of("two-bulbs-neck.toml"));
 * ExecutorService pool = Executors.newFixedThreadPool(2);
 * TriangleMesh part = PartLoader.load(base.setup().part()).mesh();
 * RunStore store = StudyFolder.open(folder, identity); // package result; or RunStore.inMemory()
 * Study study = Study.of(base, part, version, store, pool, 2);
 *
 * InputName gate = InputName.of("gate size"); // key "gate.size"; unknown names: the nearest told
 * List<Job> jobs =
 *     List.of(
 *         Job.of("as it is", base, List.of()).quick(),
 *         Job.of("4 mm gate", base, List.of(Change.mm(gate.key(), 4e-3))).quick(),
 *         Job.of("cooler", base, List.of(Change.degC("shot.temperature", 155))).quick(),
 *         Job.of("warm gate", base, List.of(new Change.Add("block.warm_spot",
 *             Map.of("centre", Change.place(at), "radius", Change.quantity(6, "mm"),
 *                 "temperature", Change.quantity(80, "degC"))))).quick());
 * List<Ran> ran = study.run("remedies", jobs, progress); // one for each job, in their order
 * ran.get(1).outcome().ifPresent(o -> show(o.dentHigh(), o.cycle()));
 * }</pre>
 *
 * <p>A change is made in the text of the case file and read back, so that a changed case obeys the
 * same rules as one that somebody wrote, and can be written out for them.
 */
package gelfront.study;
