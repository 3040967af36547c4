"""Recompute the vectors of darts, skirts, bands, openings, fullness, bias, closures, linings, cloth and baths."""

import sys

import common
from mpmath import mp


def circle_skirt(row):
    radius = row["waist"] / (2 * mp.pi * row["fraction"])
    hem = radius + row["length"]
    return {"waist_radius": radius, "hem_radius": hem, "hem_length": 2 * mp.pi * row["fraction"] * hem}


if __name__ == "__main__":
    sys.exit(common.main(circle_skirt))
