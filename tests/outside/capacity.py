"""Capacity of a cask or tub by scipy from the spec's own formulas, independent of the product; reads JSON, prints litres."""

import json
import math
import sys

from scipy.integrate import quad
from scipy.optimize import brentq

spec = json.load(sys.stdin)
height, thickness, end_thickness = spec["height"], spec["thickness"], spec["endThickness"]
half = height / 2


def outside(z):
    """Radius and slope of the outside profile."""
    if spec["vessel"] == "tub":
        slope = (spec["top"] - spec["bottom"]) / 2 / height
        return (spec["top"] + spec["bottom"]) / 4 + slope * z, slope
    bilge, end = spec["bilge"] / 2, spec["ends"] / 2
    rise = bilge - end
    if spec["profile"] == "arc":
        rho = (half**2 + rise**2) / (2 * rise)
        root = math.sqrt(rho**2 - z**2)
        return bilge - rho + root, -z / root
    if spec["profile"] == "parabola":
        return bilge - rise * (z / half) ** 2, -2 * rise * z / half**2
    axis = half / math.sqrt(1 - (end / bilge) ** 2)
    radius = bilge * math.sqrt(1 - (z / axis) ** 2)
    return radius, -(bilge**2) * z / (axis**2 * radius)


def inside(z):
    """Height and radius of the inside one thickness below the outside at z, square to it."""
    radius, slope = outside(z)
    wall = thickness + (end_thickness - thickness) * (z / half) ** 2
    cosine = 1 / math.hypot(1, slope)
    return z + wall * slope * cosine, radius - wall * cosine


def inside_radius(at):
    margin = 2 * thickness
    z = brentq(lambda place: inside(place)[0] - at, at - margin, at + margin, xtol=1e-12)
    return inside(z)[1]


factor = spec["sectionFactor"]
volume, _ = quad(lambda at: factor * inside_radius(at) ** 2, spec["from"], spec["to"], limit=200)
print(volume / 1e6)
