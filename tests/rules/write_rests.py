#!/usr/bin/env python3
"""Writes into every rule file what its proof cites, the field `rests`, as `anglewright rules --prove-all` finds it.

    python3 tests/rules/write_rests.py build/anglewright

To be run after a change to rules or courses; a test compares the files with the proofs.
"""
import json
import re
import subprocess
import sys
import textwrap
from pathlib import Path

RULES = Path(__file__).resolve().parents[2] / "rules"


def main():
    out = subprocess.run([sys.argv[1], "rules", "--prove-all", "--json"], capture_output=True, text=True, check=True).stdout
    cites = {t["id"]: t["cites"] for t in json.loads(out)["theorems"] if t["status"] != "taken"}
    for path in sorted(RULES.glob("*/*.rule")):
        text = path.read_text(encoding="utf-8")
        text = re.sub(r"^  rests  .*\n(   +.*\n)*", "", text, flags=re.M)
        ids = cites.get(path.stem, [])
        if ids:
            lines = textwrap.wrap(" ".join(ids), 105, break_on_hyphens=False)
            field = "  rests    " + "\n           ".join(lines) + "\n"
            text = re.sub(r"^(?=  source )", field, text, count=1, flags=re.M)
        path.write_text(text, encoding="utf-8")


main()
