/** Titles that say again what the heading over them has said: left to screen readers, out of sight for the rest. */

/** Headings, titles of figures and lists, captions of tables. */
const titles =
  /<h[1-6]\b[^>]*>([\s\S]*?)<\/h[1-6]>|<span class="cw-figure-title">([^<]*)<\/span>|<caption><span>([^<]*)<\/span><\/caption>|<p class="cw-list-title">([^<]*)<\/p>/g;

/** The markup of a page in which a title that its heading, or a title since, begins with is hidden from sight. */
export function saidOnce(markup: string): string {
  let said: string[] = [];
  return markup.replace(
    titles,
    (all: string, heading?: string, figure?: string, caption?: string, list?: string) => {
      if (heading !== undefined) {
        said = [plain(heading)];
        return all;
      }
      const title = plain(figure ?? caption ?? list ?? "");
      const isSaid = title !== "" && said.some((one) => one.startsWith(title));
      said.push(title);
      return isSaid ? hidden(all) : all;
    },
  );
}

function plain(markup: string): string {
  return markup
    .replace(/<[^>]*>/g, "")
    .replaceAll("\u00a0", " ")
    .trim();
}

function hidden(title: string): string {
  return title
    .replace('class="cw-figure-title"', 'class="cw-figure-title cw-hidden"')
    .replace("<caption>", '<caption class="cw-hidden">')
    .replace('class="cw-list-title"', 'class="cw-list-title cw-hidden"');
}
