# SPDX-License-Identifier: GPL-3.0-or-later
"""Published doses and worked figures put to the counter from outside; BRIMLINE_BATCH names the program."""

import csv
import io
import json
import os
import subprocess
import tempfile
import unittest
from pathlib import Path

PROGRAM = os.environ.get("BRIMLINE_BATCH", "build/bin/brimline-batch")
CATALOGUE = Path(__file__).resolve().parent.parent.parent / "station" / "shelf" / "catalogue"
POUND, PINT, GALLON = 453.592, 0.473176, 3.785412  # g, L, L


def ask(command, *files, stdin=None, options=()):
    told = subprocess.run([PROGRAM, command, *map(str, files), *options], input=stdin, capture_output=True,
                          text=True, check=False)
    if told.returncode:
        raise AssertionError(f"{command}: {told.stderr}")
    return told.stdout


def asked(command, visits, options=()):
    with tempfile.TemporaryDirectory() as folder:
        files = []
        for i, one in enumerate(visits):
            files.append(Path(folder) / f"{i}.json")
            files[-1].write_text(json.dumps(one), encoding="utf-8")
        return json.loads(ask(command, *files, options=options))


def visit(readings, vessel=None, **more):
    pool = {"id": "W-1", "kind": "pool", "use": "household", "place": "outdoor", "in_ground": True,
            "surface": "tile", "volume_m3": 50, "volume_relative_sd": 0.02, "sanitizer": "chlorine",
            "previous_sanitizer": "chlorine", "water_temperature_c": 27}
    return {"format": "brimline-visit/1", "id": "V-INVENTED", "bottle": "B-1",
            "taken_at": "2026-06-14T08:10:00-05:00", "tested_at": "2026-06-14T09:02:00-05:00",
            "home_at": "2026-06-14T17:30:00-05:00", "vessel": pool | (vessel or {}),
            "readings": [{"analyte": a, "value": v, "method": "photometer"} for a, v in readings.items()],
            "sample_temperature_c": 25} | more


def dosed(chemical, mmol, **start):
    water = {"temperature_c": 25, "start_ph": 7.5, "start_total_alkalinity_mg_l_caco3": 100,
             "start_calcium_hardness_mg_l_caco3": 250, "start_tds_mg_l": 1000} | start
    columns = ["id", "addition_1", "amount_1_mmol_kgw", *water]
    text = ",".join(columns) + f"\n1,{chemical},{mmol}," + ",".join(map(str, water.values())) + "\n"
    return {k: float(v) for k, v in next(csv.DictReader(io.StringIO(ask("dose", stdin=text)))).items() if v}


class Doses(unittest.TestCase):
    def rise(self, chemical, grams, molar, gallons):
        mmol = grams / molar / (gallons * GALLON) * 1e3
        return dosed(chemical, mmol)["end_total_alkalinity_mg_l_caco3"] - 100

    def test_new_york_bicarbonate(self):
        """10 NYCRR 6-1.30: 1.5 lb in 10,000 gal raises alkalinity by 10; the rule rounds 1.40 lb up 7 %."""
        self.assertAlmostEqual(self.rise("sodium_bicarbonate", 1.5 * POUND, 84.006, 10000), 10.7, delta=0.05)

    def test_oregon_bicarbonate(self):
        """Oregon Health Authority operator manual: 1.4 x 2 x 1.5 = 4.2 lb for 20 mg/L in 14,000; 7 % up."""
        self.assertAlmostEqual(1.4 * 2 * 1.5, 4.2)
        self.assertAlmostEqual(self.rise("sodium_bicarbonate", 4.2 * POUND, 84.006, 14000), 21.4, delta=0.1)

    def test_new_york_acid(self):
        """10 NYCRR 6-1.30: a pint of muriatic acid in 5,000 US gal lowers it by 12; of 31.45 %, 12.5."""
        grams = PINT * 1160 * 0.3145
        self.assertAlmostEqual(self.rise("hydrochloric_acid", grams, 36.46, 5000), -12.5, delta=0.06)

    def test_calcium_of_the_trade_tables(self):
        """1.20 lb of 77 % flake in 10,000 US gal for 10 mg/L: common practice, no source."""
        mmol = 1.20 * POUND * 0.77 / 110.98 / (10000 * GALLON) * 1e3
        end = dosed("calcium_chloride", mmol)["end_calcium_hardness_mg_l_caco3"]
        self.assertAlmostEqual(end, 260, delta=0.1)

    def test_calcium_that_hypochlorite_leaves(self):
        """Ca(OCl)2 leaves 100.09/141.81 = 0.706 mg/L of hardness a mg/L of chlorine."""
        mmol = 10 / 141.812
        self.assertAlmostEqual(dosed("calcium_hypochlorite", mmol)["end_calcium_hardness_mg_l_caco3"], 257.06,
                               delta=0.02)


class ByProducts(unittest.TestCase):
    def test_stabilised_chlorine_brings_stabiliser(self):
        """+9.10 of cyanuric acid a 10 mg/L of chlorine by dichlor, +6.07 by trichlor (129.07 over 141.81 and
        212.72); with the C3N3O3 core alone 0.89 and 0.59 (Environ. Eng. Sci., doi 10.1089/ees.2018.0387)."""
        for chemical, brings in (("dichlor", 9.10), ("trichlor", 6.07)):
            before = {"ph": 7.5, "total_alkalinity": 100, "calcium_hardness": 250, "cyanuric_acid": 20,
                      "free_chlorine": 3}
            mol = 10 * 50 / 70.906 / (2 if chemical == "dichlor" else 3)  # 10 mg/L in 50 m3
            given = [{"chemical": chemical, "active_mol": mol, "days_before": 10}]
            later = visit(before, additions_since=given, id="V-LATER", taken_at="2026-06-28T08:10:00-05:00",
                          tested_at="2026-06-28T09:02:00-05:00")
            told = {c["analyte"]: c for c in asked("compare", [visit(before), later])["changes"]}
            self.assertAlmostEqual(told["cyanuric_acid"]["expected"] - 20, brings, delta=0.35, msg=chemical)

    def test_bromine_is_2_25_times_its_reading_as_chlorine(self):
        """Model Aquatic Health Code 5.7.3: bromine is 2.25 times a free chlorine reading (159.81/70.91)."""
        water = {"ph": 7.5, "total_alkalinity": 90, "calcium_hardness": 200}
        plan = asked("plan", [visit(water | {"free_chlorine": 0.8}, {"sanitizer": "bromine", "kind": "spa",
                     "surface": "acrylic", "volume_m3": 1.2, "previous_sanitizer": "bromine"})])
        finding = next(f for f in plan["findings"] if f["analyte"] == "total_bromine")
        self.assertAlmostEqual(finding["value"], 0.8 * 2.25, delta=0.01)

    def test_breakpoint_takes_7_6_a_part_of_ammonia(self):
        """7.6 mg of Cl2 a mg of N (3 x 70.91 over 2 x 14.01): bottles with 0.5 mg/L of ammonia nitrogen."""
        demand = 7.6 * 0.5
        bottles = []
        for dose in (0, 2, 5, 10, 20):
            free = max(0.0, dose - demand)
            bottles.append({"dose_mg_l": dose, "stock_share": 0, "free_mg_l": free,
                            "total_mg_l": free + (0.1 if dose > demand else dose)})
        one = visit({"ph": 7.5, "total_alkalinity": 100, "calcium_hardness": 250, "free_chlorine": 0,
                     "total_chlorine": 0}, demand_test={"hours": 24, "bottles": bottles})
        told = asked("demand", [one])
        self.assertAlmostEqual(told["demand_mg_l"], 3 * 70.906 / (2 * 14.007) * 0.5, delta=0.05)
        self.assertTrue(told["breakpoint_reached"])


class Dilution(unittest.TestCase):
    """C1 = C0 (1 - f) + Cf f: the printed fractions 67, 50, 33, 67 and 38 %."""

    def replaced(self, analyte, begin, end, fill):
        base = {"ph": 7.5, "total_alkalinity": 100, "free_chlorine": 2}
        tap = {"ph": 7.5, "total_alkalinity": 100, "calcium_hardness": 200, "salt": 300}
        if fill:
            tap[analyte] = fill
        more = {"fill_water": {"readings": [{"analyte": a, "value": v} for a, v in tap.items()]}}
        earlier = visit(base | {analyte: begin}, **more)
        later = visit(base | {analyte: end}, id="V-LATER", taken_at="2026-06-21T08:10:00-05:00",
                      tested_at="2026-06-21T09:02:00-05:00", **more)
        return asked("compare", [earlier, later])["water_replaced"]

    def test_printed_table(self):
        for analyte, begin, end, fill, fraction in (("salt", 5000, 3200, 300, 0.38),
                                                    ("calcium_hardness", 800, 400, 200, 0.67),
                                                    ("cyanuric_acid", 100, 50, 0, 0.50),
                                                    ("cyanuric_acid", 120, 80, 0, 0.33)):
            told = self.replaced(analyte, begin, end, fill)
            self.assertIsNotNone(told, analyte)
            self.assertAlmostEqual(told["fraction"], fraction, delta=0.025, msg=analyte)

    def test_a_plan_drains_what_its_fraction_says(self):
        """After n drains of f each: Cf + (C0 - Cf)(1 - f)^n."""
        tap = [{"analyte": a, "value": v} for a, v in
               (("ph", 7.5), ("total_alkalinity", 80), ("calcium_hardness", 200))]
        water = {"ph": 7.5, "total_alkalinity": 100, "calcium_hardness": 800, "cyanuric_acid": 150,
                 "free_chlorine": 3}
        one = visit(water, fill_water={"readings": tap})
        for reading in one["readings"]:
            if reading["analyte"] in ("cyanuric_acid", "calcium_hardness"):
                reading["dilution"] = 4
        plan, left = asked("plan", [one]), 1.0
        for step in plan["steps"]:
            if step["action"] != "drain_refill":
                continue
            self.assertLessEqual(step["fraction"], 1 / 3 + 1e-3)
            left *= 1 - step["fraction"]
            self.assertAlmostEqual(step["after"]["cyanuric_acid"], 150 * left, delta=0.01)
            self.assertAlmostEqual(step["after"]["calcium_hardness"], 200 + 600 * left, delta=0.01)
        self.assertLess(left, 0.5)


class NotAtHome(unittest.TestCase):
    def test_incidents_are_handed_over(self):
        """15,300 mg.min/L after diarrhoea (a county procedure, CDC: 20 mg/L for 765 min) is an operator's
        work under the health department, so no household sheet ever doses for it."""
        self.assertEqual(20 * 765, 15300)
        water = {"ph": 7.4, "total_alkalinity": 100, "calcium_hardness": 250, "free_chlorine": 2,
                 "cyanuric_acid": 0}
        for use in ("household", "public"):
            plan = asked("plan", [visit(water, {"use": use}, incident="faeces")])
            self.assertFalse(plan["home_plan"])
            self.assertEqual(plan["swim"]["now"], "no")
            self.assertNotIn("add", [s["action"] for s in plan["steps"]])
            self.assertTrue(plan["why_not"])


if __name__ == "__main__":
    unittest.main()
