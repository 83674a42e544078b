import type { MenuView } from '../../view.ts';
import { HostException } from '../hostError.ts';
import { aText, HostObject, own, part } from '../hostObject.ts';
import { servedHtml } from '../servedHtml.ts';
import { buttonSets, buttons } from './constants.ts';
import { HtmlOutputStandIn } from './html.ts';
import type { ScriptRun } from './scriptRun.ts';

type HostUi = GoogleAppsScript.Base.Ui;
type HostMenu = GoogleAppsScript.Base.Menu;

export class UiStandIn
  extends HostObject
  implements Pick<HostUi, 'createMenu' | 'createAddonMenu' | 'showSidebar' | 'showModalDialog'>
{
  readonly kind_ = 'Ui';
  readonly ButtonSet = new Choices(buttonSets);
  readonly Button = new Choices(buttons);
  readonly #run: ScriptRun;
  constructor(run: ScriptRun) {
    super();
    this.#run = run;
  }
  createMenu(caption: string): HostMenu {
    return part<HostMenu>(new MenuStandIn(this.#run, aText(caption, 'Ui.createMenu')));
  }
  createAddonMenu(): HostMenu {
    return part<HostMenu>(new MenuStandIn(this.#run, this.#run.book.name));
  }
  showSidebar(userInterface: GoogleAppsScript.HTML.HtmlOutput): void {
    const output = own(userInterface, HtmlOutputStandIn, 'Ui.showSidebar');
    this.#run.execution.panel = {
      kind: 'sidebar',
      title: output.title_ || this.#run.book.name,
      html: servedHtml(output.content_),
    };
  }
  showModalDialog(userInterface: object, title: string): void {
    const output = own(userInterface, HtmlOutputStandIn, 'Ui.showModalDialog');
    this.#run.execution.panel = {
      kind: 'dialog',
      title: aText(title, 'Ui.showModalDialog'),
      html: servedHtml(output.content_),
      ...(output.width_ === undefined ? {} : { width: output.width_ }),
      ...(output.height_ === undefined ? {} : { height: output.height_ }),
    };
  }
  /** Nobody is there to choose while a script runs here: the message is shown in passing, and the answer is OK. */
  alert(titleOrPrompt: string, promptOrButtons?: unknown): unknown {
    const prompt = typeof promptOrButtons === 'string' ? promptOrButtons : titleOrPrompt;
    this.#run.toast(prompt, typeof promptOrButtons === 'string' ? titleOrPrompt : '');
    return buttons.OK;
  }
}

class Choices extends HostObject {
  readonly kind_ = 'Enum';
  constructor(values: Readonly<Record<string, HostObject>>) {
    super();
    Object.assign(this, values);
  }
}

class MenuStandIn extends HostObject implements HostMenu {
  readonly kind_ = 'Menu';
  readonly #run: ScriptRun;
  readonly #title: string;
  readonly #items: MenuView['items'][number][] = [];
  constructor(run: ScriptRun, title: string) {
    super();
    this.#run = run;
    this.#title = title;
  }
  addItem(caption: string, functionName: string): HostMenu {
    this.#items.push({ label: aText(caption, 'Menu.addItem'), run: aText(functionName, 'Menu.addItem') });
    return part<HostMenu>(this);
  }
  addSeparator(): HostMenu {
    this.#items.push(null);
    return part<HostMenu>(this);
  }
  addSubMenu(_menu: HostMenu): HostMenu {
    throw new HostException('The stand-in does not cover Menu.addSubMenu.');
  }
  /** One menu for each name; a later one takes its place. */
  addToUi(): void {
    this.#run.menus[this.#run.execution.seat].set(this.#title, { title: this.#title, items: [...this.#items] });
  }
}
