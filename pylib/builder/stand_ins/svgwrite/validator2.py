# Stands for sha256 bd8e3d581aed794b4a45b804f1154985ac05f0ee3d268d017d382653e562e455
"""No validator: drawings here are made with debug=False, which asks nothing of one. It brings some forty regular
expressions and large tables, a sixth of what the page imports."""


class NoValidator:
    def __getattr__(self, name):
        raise ValueError("this library has no validator: use debug=False")


def get_validator(profile, debug=True):
    return NoValidator()
