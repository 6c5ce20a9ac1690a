// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import java.util.List;
import java.util.stream.Collectors;

/** A case file with mistakes: all of them. The message has one line a mistake. */
public final class CaseException extends RuntimeException {
  private final transient List<Mistake> mistakes;

  public CaseException(String file, List<Mistake> mistakes) {
    super(mistakes.stream().map(m -> m.in(file)).collect(Collectors.joining("\n")));
    this.mistakes = List.copyOf(mistakes);
  }

  CaseException(String file, List<Mistake> mistakes, Throwable cause) {
    this(file, mistakes);
    initCause(cause);
  }

  /** In the file's order. */
  public List<Mistake> mistakes() {
    return mistakes;
  }
}
