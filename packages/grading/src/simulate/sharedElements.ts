import type { Element, Network } from "@underchassis/calc";

/**
 * Gives equal elements of different networks the same object, so that what differs between two networks is seen at a glance, and
 * equal networks have equal fingerprints.
 */
export class SharedElements {
  readonly #byText = new Map<string, Element>();
  readonly #numbers = new Map<Element, number>();

  /** The network with elements that earlier networks have already, where they are equal. */
  share(network: Network): Network {
    return { ...network, elements: network.elements.map((element) => this.#share(element)) };
  }

  /** Equal for two shared networks exactly when their elements are, in the same order, and their references. */
  fingerprint({ reference, elements }: Network): string {
    return `${reference} ${elements.map((element) => this.#numbers.get(element)).join(" ")}`;
  }

  #share(element: Element): Element {
    const text = JSON.stringify(element, (_, value: unknown) =>
      typeof value === "number" && !Number.isFinite(value) ? `${value}` : value,
    );
    const known = this.#byText.get(text);
    if (known !== undefined) return known;
    this.#byText.set(text, element);
    this.#numbers.set(element, this.#numbers.size);
    return element;
  }
}
