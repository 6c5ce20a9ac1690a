// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import java.util.function.Consumer;

/** The frame of a page with an answer of a study: loads nothing, runs nothing. */
final class AnswerPage {
  private AnswerPage() {}

  /**
   * @param title of the page
   * @param content puts sections into it
   */
  static String of(String title, Consumer<Html> content) {
    return page(title, "default-src 'none'", content);
  }

  /** As above; pictures stand in the page itself. */
  static String withPictures(String title, Consumer<Html> content) {
    return page(title, "default-src 'none'; img-src data:", content);
  }

  private static String page(String title, String allowed, Consumer<Html> content) {
    String css = PageParts.text("report.css");
    Html h = new Html().trusted("<!DOCTYPE html>\n");
    h.open("html", "lang", "en").open("head").empty("meta", "charset", "utf-8");
    String policy = allowed + "; style-src " + PageParts.hash(css);
    h.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy);
    h.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    h.element("title", title);
    h.open("style").trusted(css).close().close();
    h.open("body").open("main").element("h1", title);
    content.accept(h);
    return h.close().close().close().toString();
  }
}
