import { HostException } from '../hostError.ts';
import { aNumber, aText, HostObject, part } from '../hostObject.ts';
import type { ScriptRun } from './scriptRun.ts';

type HostOutput = GoogleAppsScript.HTML.HtmlOutput;
type OutputPart = Pick<
  HostOutput,
  'setTitle' | 'getTitle' | 'setWidth' | 'setHeight' | 'getContent' | 'append' | 'setContent' | 'addMetaTag'
>;

export class HtmlOutputStandIn extends HostObject implements OutputPart {
  readonly kind_ = 'HtmlOutput';
  content_: string;
  title_ = '';
  width_: number | undefined;
  height_: number | undefined;
  constructor(content: string) {
    super();
    this.content_ = content;
  }
  #self(): HostOutput {
    return part<HostOutput>(this);
  }
  setTitle(title: string): HostOutput {
    this.title_ = aText(title, 'HtmlOutput.setTitle');
    return this.#self();
  }
  getTitle(): string {
    return this.title_;
  }
  setWidth(width: number): HostOutput {
    this.width_ = aNumber(width, 'HtmlOutput.setWidth');
    return this.#self();
  }
  setHeight(height: number): HostOutput {
    this.height_ = aNumber(height, 'HtmlOutput.setHeight');
    return this.#self();
  }
  getContent(): string {
    return this.content_;
  }
  append(addedContent: string): HostOutput {
    this.content_ += aText(addedContent, 'HtmlOutput.append');
    return this.#self();
  }
  setContent(content: string): HostOutput {
    this.content_ = aText(content, 'HtmlOutput.setContent');
    return this.#self();
  }
  addMetaTag(name: string, _content: string): HostOutput {
    const allowed = ['apple-mobile-web-app-capable', 'google-site-verification', 'mobile-web-app-capable', 'viewport'];
    if (!allowed.includes(name)) throw new HostException(`The meta tag "${name}" is not allowed.`);
    return this.#self();
  }
}

export class HtmlServiceStandIn extends HostObject {
  readonly kind_ = 'HtmlService';
  readonly #run: ScriptRun;
  constructor(run: ScriptRun) {
    super();
    this.#run = run;
  }
  createHtmlOutputFromFile(filename: string): HtmlOutputStandIn {
    const name = aText(filename, 'HtmlService.createHtmlOutputFromFile').replace(/\.html$/, '');
    const html = this.#run.htmlFiles[name];
    if (html === undefined) throw new HostException(`No HTML file named ${name} was found.`);
    return new HtmlOutputStandIn(html);
  }
  createHtmlOutput(html = ''): HtmlOutputStandIn {
    return new HtmlOutputStandIn(aText(html, 'HtmlService.createHtmlOutput'));
  }
}
