"""A lesson beside itself: two drafts compared, and what an edition changed for those who have the earlier one."""
