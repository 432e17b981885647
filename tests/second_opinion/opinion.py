# SPDX-License-Identifier: GPL-3.0-or-later
"""A plan followed step by step with other hands: what the second opinion finds different."""

from dataclasses import replace

from chemistry import (ALKALINITY, BORON, BROMINE, CACO3, CHLORINE, CYANURIC, SALT, carbon_for, from_readings,
                       hypochlorous, in_air, ph_of, saturation_index)
from doses import BRINGS, BY_LABEL, moles_of

LINEAR = {"total_alkalinity": ("alkalinity", ALKALINITY), "calcium_hardness": ("calcium", CACO3),
          "cyanuric_acid": ("cyanurate", CYANURIC), "free_chlorine": ("chlorine", CHLORINE),
          "total_bromine": ("bromine", BROMINE), "borate": ("borate", BORON)}
# What is allowed: pH as it is, the rest as a share; hypochlorous acid follows pH and is told for the eye.
PH, SHARE, SHARE_HOCL, INDEX = 0.03, 0.02, 0.08, 0.06
# A reading this small is judged by the difference of this much, mg/L
SMALL = {"free_chlorine": 0.5, "total_bromine": 0.5, "cyanuric_acid": 2, "hocl": 0.01}


class Opinion:
    def __init__(self, kind, visit, readings, fill, products):
        self.kind, self.visit, self.readings, self.products = kind, visit, dict(readings), products
        self.celsius = visit["sample_temperature_c"]
        self.warm = visit["vessel"]["water_temperature_c"]
        self.kilograms = visit["vessel"]["volume_m3"] * 1000
        self.water = from_readings(readings, self.celsius)
        self.fill = from_readings(fill, self.celsius, tap=True) if fill else None
        self.fill_readings = fill or {}
        self.faults, self.worst, self.compared = [], {}, 0
        self.known = True  # until water of unknown make comes in

    def fault(self, step, what):
        self.faults.append(f"{self.visit['id']} ({self.kind}) step {step['order']} {step['action']} "
                           f"{step.get('chemical') or ''}: {what}")

    def compare(self, step, name, theirs, ours, allowed, relative):
        difference = abs(theirs - ours)
        if relative:
            difference /= max(abs(ours), SMALL.get(name, 1))
        self.worst[name] = max(self.worst.get(name, 0), difference)
        self.compared += 1
        if difference > allowed:
            self.fault(step, f"{name} is told as {theirs:.4g}, the second opinion is {ours:.4g}")

    def follow(self, plan):
        for step in plan["steps"]:
            before = ph_of(self.water, self.celsius) if step["action"] == "aerate" else None
            self.apply(step)
            if step.get("after") and self.known:
                self.judge_after(step, before)
        return self

    def apply(self, step):
        if step["action"] == "drain_refill":
            if self.fill is None:
                self.known = False
                return
            self.water = self.water.mixed(self.fill, step["fraction"])
        chemical, moles = step.get("chemical"), step.get("active_mol")
        if step["action"] != "add":
            return
        if moles is None:
            if chemical not in BY_LABEL:
                self.fault(step, "no moles, and it is not dosed by its label")
            return
        self.judge_amount(step, chemical, moles)
        share = moles / self.kilograms
        self.water = self.water.plus(**{name: n * share for name, n in BRINGS[chemical].items()})

    def judge_amount(self, step, chemical, moles):
        by_label = moles_of(step, self.products, self.visit["at_home"])
        if by_label is None:
            self.fault(step, "no label says how strong it is")
        else:
            self.compare(step, "amount", moles, by_label, SHARE, True)

    def judge_after(self, step, before):
        after = step["after"]
        ph = ph_of(self.water, self.celsius)
        if before is not None and "ph" in after:
            # How much carbon leaves is the planner's own: it must go towards air and not beyond.
            end = in_air(self.water, self.celsius)
            low, high = sorted((before, end))
            if not low - PH <= after["ph"] <= high + PH:
                self.fault(step, f"air takes pH from {before:.2f} to {end:.2f} at most, {after['ph']:.2f}")
            self.water = replace(self.water, carbon=carbon_for(self.water, after["ph"], self.celsius))
        elif "ph" in after:
            self.compare(step, "ph", after["ph"], ph, PH, False)
        for name, (total, mass) in LINEAR.items():
            if name in after:
                self.compare(step, name, after[name], getattr(self.water, total) * mass * 1e3, SHARE, True)
        if "salt" in after:
            self.compare(step, "salt", after["salt"], self.water.chloride * SALT * 1e3, SHARE, True)
        self.judge_vessel(step, after.get("vessel") or {})

    def judge_vessel(self, step, vessel):
        if "ph" not in vessel:
            return
        ph = ph_of(self.water, self.warm)
        self.compare(step, "vessel ph", vessel["ph"], ph, PH, False)
        if "si_calcite" in vessel:
            ours = saturation_index(self.water, ph, self.warm)
            self.compare(step, "si_calcite", vessel["si_calcite"], ours, INDEX, False)
        if "hocl" in vessel:
            ours = hypochlorous(self.water, ph, self.warm)
            self.compare(step, "hocl", vessel["hocl"], ours, SHARE_HOCL, True)
