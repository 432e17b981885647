#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""A pseudo-language from the sentences of a .ts file: every letter accented, every sentence 40 % longer.

pseudo.py IN.ts OUT.ts
"""
import re
import sys
import xml.etree.ElementTree as ET

ACCENTED = str.maketrans("aceinosuyzACEINOSUYZ", "áçéîñöšûÿžÁÇÉÎÑÖŠÛÝŽ")
FILL = "öñé þwö ŧhréé "


def pseudo(text: str) -> str:
    """`text` accented; places (%1, %n) stay, and words are added until it is 40 % longer."""
    if not re.search(r"[a-z]{2}", text):  # figures and signs are the same in every language
        return text
    parts = re.split(r"(%L?\d|%n)", text)
    out = "".join(p if p.startswith("%") else p.translate(ACCENTED) for p in parts)
    more = round(0.4 * len(text))
    long_fill = (FILL * (more // len(FILL) + 1))[:more].rstrip()
    if not long_fill:
        return out
    # A word stays one word, longer; a sentence gets more words.
    joined = out + (" " + long_fill if " " in text else long_fill.replace(" ", ""))
    return joined


def main() -> None:
    tree = ET.parse(sys.argv[1])
    tree.getroot().set("language", "en")
    for message in tree.iter("message"):
        translation = message.find("translation")
        translation.attrib.pop("type", None)
        text = pseudo(message.find("source").text)
        forms = translation.findall("numerusform")
        for form in forms:
            form.text = text
        if not forms:
            translation.text = text
    tree.write(sys.argv[2], encoding="utf-8", xml_declaration=True)


if __name__ == "__main__":
    main()
