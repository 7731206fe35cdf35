import { expect, test } from "vitest";
import { escapeHtml, html, scriptJson, trusted } from "../../lib/page/index.js";

test("text put into a template is escaped, markup is not", () => {
  const text = `<script>alert("1")</script> & 'more'`;
  expect(String(html`<p title="${text}">${text}${html`<b>${"<"}</b>`}</p>`)).toBe(
    `<p title="${escapeHtml(text)}">${escapeHtml(text)}<b>&lt;</b></p>`,
  );
  expect(escapeHtml(text)).toBe("&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;more&#39;");
});

test("lists are joined, absent parts leave nothing, numbers stay", () => {
  expect(String(html`${["a", html`<br>`, "<"]}${undefined}${false}${0}${trusted("<i>")}`)).toBe(
    "a<br>&lt;0<i>",
  );
});

test("JSON in a script element cannot end it, and reads back the same", () => {
  const value = { text: "</script><script>alert(1)</script><!-- \u2028 & ]]>" };
  const written = String(scriptJson(value));
  expect(written).not.toMatch(/[<>&\u2028]/);
  expect(JSON.parse(written)).toEqual(value);
});
