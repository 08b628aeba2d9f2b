import { Parser } from 'htmlparser2';

/** A page or a piece of one as plain text, and the structured data that stands in it. */
export interface HtmlText {
  readonly text: string;
  /** The content of each script of the type application/ld+json. */
  readonly data: readonly string[];
}

const BLOCKS: ReadonlySet<string> = new Set(
  'address article aside blockquote br dd div dl dt figcaption figure footer form h1 h2 h3 h4 h5 h6 header hr li main nav ol p pre section table tbody td tfoot th thead tr ul title'.split(
    ' ',
  ),
);
const SILENT: ReadonlySet<string> = new Set(['script', 'style', 'noscript', 'template', 'svg', 'head']);
const TAG =
  /<\/?(?:!doctype|html|head|body|script|div|p|br|li|ul|ol|h[1-6]|span|table|section|article|meta|b|i|em|strong|a)\b[^>]*>/i;

export function looksLikeHtml(text: string): boolean {
  return TAG.test(text);
}

const BLOCK_TAG = /<(?:p|br|li|div|h[1-6]|tr|td|body|section|article)\b/i;

/**
 * The text that a reader of the page sees, a line to each block; characters written as entities are read. Where there is no
 * block, as in text with a word in bold, the line breaks of the text stand. Nothing is run.
 */
export function htmlText(page: string): HtmlText {
  const html = BLOCK_TAG.test(page) ? page : page.replace(/\r\n?|\n/g, '<br>');
  const lines: string[] = [];
  const data: string[] = [];
  let line = '';
  let script: string | null = null;
  let silent = 0;
  const ends = (): void => {
    const said = line.replace(/\s+/g, ' ').trim();
    if (said !== '') lines.push(said);
    line = '';
  };
  const parser = new Parser(
    {
      onopentag(name, attributes) {
        if (BLOCKS.has(name)) ends();
        if (SILENT.has(name)) silent += 1;
        if (name === 'script' && /^application\/ld\+json\b/i.test((attributes.type ?? '').trim())) script = '';
      },
      ontext(text) {
        if (script !== null) script += text;
        else if (silent === 0) line += text;
      },
      onclosetag(name) {
        if (BLOCKS.has(name)) ends();
        if (SILENT.has(name)) silent -= 1;
        if (name === 'script' && script !== null) {
          data.push(script);
          script = null;
        }
      },
    },
    { decodeEntities: true },
  );
  parser.write(html);
  parser.end();
  ends();
  return { text: lines.join('\n'), data };
}
