// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.setup.LoadedCase;
import java.util.concurrent.Executor;
import org.jspecify.annotations.Nullable;

/** The quick verdict on the project that is open: asked anew after each change, kept for all. */
final class QuickAnswers {
  private final Backgrounds threads;
  private final Executor ui;
  private final Runnable told;
  private @Nullable Quick quick;
  private Quick.Verdict verdict = Quick.Verdict.WAITING;

  /** Text of the case that was asked about last. */
  private String asked = "";

  /**
   * @param ui runs things on the window's thread
   * @param told when there is another verdict, on that thread
   */
  QuickAnswers(Backgrounds threads, Executor ui, Runnable told) {
    this.threads = threads;
    this.ui = ui;
    this.told = told;
  }

  Quick.Verdict verdict() {
    return verdict;
  }

  /** That on a case; waiting where another one was asked about last. */
  Quick.Verdict on(LoadedCase loaded) {
    return loaded.text().equals(asked) ? verdict : Quick.Verdict.WAITING;
  }

  /**
   * From now on about that project.
   *
   * @param project null: about none
   */
  void about(@Nullable Project project) {
    stop();
    verdict = Quick.Verdict.WAITING;
    quick = project == null ? null : of(project);
  }

  private Quick of(Project project) {
    return new Quick(
        project.now(), project.part(), threads.workers(), threads.quick(), ui, this::answered);
  }

  private void answered(Quick.Verdict v) {
    verdict = v;
    told.run();
  }

  /** The case as it stands now; a part from other files is got to know first. */
  void ask(Project project) {
    Quick known = quick;
    if (known == null || !known.fits(project.now())) {
      stop();
      known = of(project);
      quick = known;
    }
    asked = project.now().text();
    known.ask(project.now());
  }

  /** Gives up what is being calculated; longer work would only take turns with it. */
  void stop() {
    if (quick != null) {
      quick.stop();
    }
  }
}
