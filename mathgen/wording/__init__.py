"""From an ask and its roles to sentences; the sentences themselves stand in ``templates/wording``."""
