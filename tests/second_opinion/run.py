# SPDX-License-Identifier: GPL-3.0-or-later
"""Asks the counter for plans and checks them: run.py BRIMLINE-BATCH SHELF [--visits N] [--seed S].

Prints the worst difference by kind of water; ends with 1 where any is larger than allowed.
"""

import argparse
import json
import subprocess
import sys
import tempfile
from collections import Counter, defaultdict
from pathlib import Path

from doses import shelf
from opinion import Opinion
from order import faults_of
from visits import KINDS, visit

COLUMNS = ("ph", "vessel ph", "total_alkalinity", "calcium_hardness", "cyanuric_acid", "free_chlorine",
           "total_bromine", "borate", "salt", "si_calcite", "hocl", "amount")
SHORT = ("pH", "pH warm", "TA", "CH", "CYA", "FC", "Br", "borate", "salt", "SI", "HOCl", "amount")


def plan_of(program, folder, one):
    file = Path(folder) / "visit.json"
    file.write_text(json.dumps(one), encoding="utf-8")
    told = subprocess.run([program, "plan", str(file)], capture_output=True, text=True, check=False)
    if told.returncode:
        raise SystemExit(f"{one['id']}: {told.stderr}")
    return json.loads(told.stdout)


def print_table(worst, plans, compared):
    print("Worst difference; pH and SI as they are, the rest in percent")
    print(f"{'kind of water':30}{'plans':>6}{'values':>7}" + "".join(f"{s:>9}" for s in SHORT))
    for kind in KINDS:
        cells = []
        for name in COLUMNS:
            value = worst[kind].get(name)
            plain = name in ("ph", "vessel ph", "si_calcite")
            cells.append("" if value is None else f"{value:.4f}" if plain else f"{100 * value:.2f}")
        print(f"{kind:30}{plans[kind]:6}{compared[kind]:7}" + "".join(f"{c:>9}" for c in cells))


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("shelf")
    parser.add_argument("--visits", type=int, default=200)
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    products, faults = shelf(args.shelf), []
    worst, plans, compared = defaultdict(dict), Counter(), Counter()
    with tempfile.TemporaryDirectory() as folder:
        for number in range(args.visits):
            kind, one, readings, fill = visit(number, args.seed)
            plan = plan_of(args.program, folder, one)
            if not plan["home_plan"]:
                faults.append(f"{one['id']} ({kind}): no home plan: {plan['why_not']}")
                continue
            opinion = Opinion(kind, one, readings, fill, products).follow(plan)
            faults += opinion.faults + faults_of(one, plan)
            plans[kind] += 1
            compared[kind] += opinion.compared
            for name, value in opinion.worst.items():
                worst[kind][name] = max(worst[kind].get(name, 0), value)
    print_table(worst, plans, compared)
    print(f"{sum(plans.values())} plans, {sum(compared.values())} values compared, {len(faults)} faults")
    for fault in faults:
        print(fault)
    # An opinion that compared nothing has said nothing.
    return 1 if faults or sum(compared.values()) < 5 * args.visits else 0


if __name__ == "__main__":
    sys.exit(main())
